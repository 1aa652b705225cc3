package kitleaf.press.type;

/** The bundled font files. */
enum FaceFile {
    TEXT_400("atkinson-hyperlegible-next", "AtkinsonHyperlegibleNext-Regular"),
    TEXT_600("atkinson-hyperlegible-next", "AtkinsonHyperlegibleNext-SemiBold"),
    HEADING_500("alegreya", "Alegreya-Medium"),
    HEADING_700("alegreya", "Alegreya-Bold"),
    SANS_400("noto-sans", "NotoSans-Regular"),
    SANS_600("noto-sans", "NotoSans-SemiBold"),
    SYMBOLS_2("noto-sans-symbols-2", "NotoSansSymbols2-Regular"),
    SYMBOLS("noto-sans-symbols", "NotoSansSymbols-Regular"),
    MATH("noto-sans-math", "NotoSansMath-Regular");

    private final String folder;
    private final String file;

    FaceFile(String folder, String file) {
        this.folder = folder;
        this.file = file;
    }

    /** The font's name, as font programs are named in a PDF. */
    String faceName() {
        return file;
    }

    /** Where the file lies on the class path. */
    String resource() {
        return "/kitleaf/fonts/" + folder + "/" + file + ".ttf";
    }
}
