package kitleaf.basket;

/** How a piece stands: what she says of it, and what its days and stitches tell. */
public enum PieceState {
    /** Nobody has put a needle in it. */
    WAITING,
    /** It is being stitched. */
    BEGUN,
    /** It is laid aside for a while: neither chosen nor bought for. */
    RESTING,
    /** It will not be finished: neither chosen nor bought for. */
    GIVEN_UP,
    /** Its last stitch is done, and it is not made up yet. */
    STITCHED,
    /** It is made up: what she calls finished. */
    MADE_UP;

    /** Whether it is one she says; the others are reckoned. */
    public boolean said() {
        return this == BEGUN || laidAside();
    }

    /** Whether it lies still until she takes it up again. */
    public boolean laidAside() {
        return this == RESTING || this == GIVEN_UP;
    }
}
