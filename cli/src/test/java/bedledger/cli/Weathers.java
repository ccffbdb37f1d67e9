package bedledger.cli;

/** Weather of an invented place. */
final class Weathers {
    static final String NORMALS = """
            month,min_c,max_c,rain_mm
            1,-5,3,80
            2,-4,5,75
            3,0,10,90
            4,5,16,95
            5,10,21,100
            6,14,26,95
            7,17,29,90
            8,16,28,85
            9,12,24,90
            10,6,17,85
            11,1,11,90
            12,-3,5,85
            """;

    private Weathers() {}
}
