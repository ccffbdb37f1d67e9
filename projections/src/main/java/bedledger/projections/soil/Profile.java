package bedledger.projections.soil;

import java.util.List;
import java.util.OptionalDouble;

/** Layers from the surface down without a gap, cumulated by mass (Ellert and Bettany 1995; Wendt and Hauser 2013, linear within a layer). */
public record Profile(List<Layer> layers) {
    private static final double NEAR = 1e-9;

    public Profile {
        layers = List.copyOf(layers);
        double depth = 0;
        for (Layer layer : layers) {
            if (Math.abs(layer.from() - depth) > NEAR) {
                throw new IllegalArgumentException("layers must follow each other from the surface down: " + layers);
            }
            depth = layer.to();
        }
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a profile has at least one layer");
        }
    }

    /** cm. */
    public double depth() {
        return layers.get(layers.size() - 1).to();
    }

    /** Fine earth, t/ha. */
    public double mass() {
        return layers.stream().mapToDouble(Layer::mass).sum();
    }

    /** Organic carbon over the whole depth, t/ha. */
    public double stock() {
        return layers.stream().mapToDouble(Layer::stock).sum();
    }

    /** Organic carbon down to a depth in cm, t/ha; empty where it was not sampled so deep. */
    public OptionalDouble stockToDepth(double depth) {
        return down(depth, Measured.DEPTH);
    }

    /** Organic carbon in the uppermost so many t/ha of fine earth, t/ha; empty where less was sampled. */
    public OptionalDouble stockInMass(double mass) {
        return down(mass, Measured.MASS);
    }

    private enum Measured {
        DEPTH,
        MASS;

        double of(Layer layer) {
            return this == DEPTH ? layer.to() - layer.from() : layer.mass();
        }
    }

    private OptionalDouble down(double wanted, Measured by) {
        double left = wanted;
        double carbon = 0;
        for (Layer layer : layers) {
            double here = by.of(layer);
            if (left <= here) {
                return OptionalDouble.of(carbon + layer.stock() * left / here);
            }
            left -= here;
            carbon += layer.stock();
        }
        return left <= NEAR * wanted ? OptionalDouble.of(carbon) : OptionalDouble.empty();
    }
}
