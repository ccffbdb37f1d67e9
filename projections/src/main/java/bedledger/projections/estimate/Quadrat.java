package bedledger.projections.estimate;

/** One frame cut at soil level: area in m², fresh mass in g. */
public record Quadrat(double squareMetres, double freshGrams) {
    public Quadrat {
        if (!(squareMetres > 0) || !(freshGrams >= 0) || Double.isInfinite(squareMetres + freshGrams)) {
            throw new IllegalArgumentException("A quadrat was refused: entered " + freshGrams + " g on " + squareMetres
                    + " m². The area must be above 0, the mass 0 or more.");
        }
    }

    double gramsPerSquareMetre() {
        return freshGrams / squareMetres;
    }
}
