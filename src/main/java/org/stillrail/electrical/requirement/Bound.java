package org.stillrail.electrical.requirement;

/** On which side of a limit a value must stay. */
public enum Bound {

    AT_MOST {
        @Override
        public double margin(double limit, double value) {
            return (limit - value) / limit;
        }
    },
    AT_LEAST {
        @Override
        public double margin(double limit, double value) {
            return (value - limit) / limit;
        }
    };

    /** Distance to a positive limit over the limit, positive where the limit is kept. */
    public abstract double margin(double limit, double value);
}
