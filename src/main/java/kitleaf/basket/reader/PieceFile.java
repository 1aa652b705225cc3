package kitleaf.basket.reader;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.yaml.YamlTree;

/**
 * Where one piece is written.
 *
 * @param file its file, as she would name it
 * @param document which document of that file, from 1
 * @param basket the basket it belongs to; none for a file that lies alone
 */
public record PieceFile(Path file, int document, Optional<Path> basket) {

    /** Refuses documents below 1. */
    public PieceFile {
        Objects.requireNonNull(file);
        Objects.requireNonNull(basket);
        if (document < 1) {
            throw new IllegalArgumentException("documents are counted from 1: " + document);
        }
    }

    /** The piece's ID. */
    public String id() {
        return BasketFiles.id(file, document);
    }

    /** All pieces of a basket folder, whether they can be read or not; none if it is no basket. */
    public static List<PieceFile> in(Path basket) {
        List<PieceFile> pieces = new ArrayList<>();
        LinkGuard fence = LinkGuard.round(basket);
        for (Path file : BasketFiles.pieces(basket, fence, new Problems())) {
            pieces.addAll(of(file, Optional.of(basket), fence));
        }
        return pieces;
    }

    /** All pieces of one file; none if there is no such file or its name does not end in {@code .yaml}. */
    public static List<PieceFile> of(Path file) {
        boolean piece = file.toString().endsWith(BasketFiles.ENDING) && Files.isRegularFile(file);
        return piece ? of(file, BasketFiles.basketOf(file), LinkGuard.of(file)) : List.of();
    }

    /** The fence it stands in. */
    public LinkGuard fence() {
        return basket.map(LinkGuard::round).orElseGet(() -> LinkGuard.of(file));
    }

    private static List<PieceFile> of(Path file, Optional<Path> basket, LinkGuard fence) {
        Problems unheard = new Problems();
        // A file that cannot be read has its first piece still; what is wrong with it is told when it is read in earnest.
        int documents = SourceReader.read(fence, file, unheard).map(source -> YamlTree.read(source, unheard).documents().size()).orElse(1);
        List<PieceFile> pieces = new ArrayList<>();
        for (int document = 1; document <= Math.max(1, documents); document++) {
            pieces.add(new PieceFile(BasketFiles.shown(file), document, basket));
        }
        return pieces;
    }
}
