package kitleaf.sizing.thread;

import java.util.List;
import java.util.Objects;

/**
 * Something to know before buying.
 *
 * @param kind what it is
 * @param code the thread
 * @param skein the name of its put-up
 * @param pieces IDs of the pieces it touches, in the order the stash was shared; may be empty
 */
public record ThreadWarning(Kind kind, String code, String skein, List<String> pieces) {

    /** What there is to know. */
    public enum Kind {
        /** Pieces call for it without telling how much; nothing is set aside or bought for them. */
        NEED_UNKNOWN,
        /** Pieces get it out of more than one dye lot although the lot matters. */
        MIXED_LOTS,
        /** Pieces name a dye lot that the stash does not hold enough of: ask for that lot. */
        ASK_FOR_LOT,
        /** Pieces lack the lot they name, and the stash has other lots left, which are not given for it unless the thread mixes lots. */
        OTHER_LOTS,
        /**
         * It is to be bought, and the stash has its code in another put-up, in which no piece takes it: perhaps a put-up was left out
         * there.
         */
        STASH_AS_OTHER,
        /** What is bought is only just enough. */
        JUST_ENOUGH,
        /** The last skein is bought for very little. */
        JUST_OVER,
        /** It is to be bought, others have a price, and it has none. */
        NO_PRICE
    }

    /** Copies the list. */
    public ThreadWarning {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(code);
        Objects.requireNonNull(skein);
        pieces = List.copyOf(pieces);
    }
}
