package slackwater.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * One search from start to end: the start, a scatter over all layouts, then evolution of the best by CMA-ES
 * [Hansen2001]. The way it goes depends on the task, the seed and what trials come to, on nothing else.
 */
final class Island {
    /** Share of the budget that goes to the scatter. */
    private static final double SCATTER_FRACTION = 0.2;
    private static final double FIRST_STEP = 0.07;
    private static final double LATER_STEP = 0.25;
    /** Layouts that are not allowed cost nothing but the check; this many of them for each trial are enough. */
    private static final int REFUSALS_PER_TRIAL = 400;

    private final Task task;
    private final Trials trials;
    private final int budget;
    private final RandomGenerator random;
    private final Codec codec;
    private final Rules rules;
    private final Set<String> spent = new HashSet<>();
    private final List<Ranked> ranked = new ArrayList<>();
    private double[] best;
    private double bestValue = Double.POSITIVE_INFINITY;
    private long refused;

    /** Thrown through the optimiser when the budget is spent. */
    private static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1;

        Spent() {
            super("the budget is spent", null, false, false);
        }
    }

    Island(Task task, Trials trials, int budget, long seed) {
        this.task = task;
        this.trials = trials;
        this.budget = budget;
        this.random = new MersenneTwister(seed);
        this.codec = task.codec();
        this.rules = task.rules();
        this.best = codec.spread();
    }

    /** The trials in the order in which they were made. */
    List<Ranked> run() {
        try {
            begin();
            scatter();
            for (double step = FIRST_STEP; mayGoOn(); step = LATER_STEP) {
                evolve(step);
            }
        } catch (Spent done) {
            return List.copyOf(ranked);
        }
        return List.copyOf(ranked);
    }

    private boolean mayGoOn() {
        return spent.size() < budget && refused < (long) REFUSALS_PER_TRIAL * budget;
    }

    private void begin() {
        if (task.startIsAllowed()) {
            double value = run(task.scenario());
            Optional<double[]> start = codec.genes(task.scenario().pumps());
            start.ifPresent(genes -> keep(genes, value));
        }
        value(codec.spread());
    }

    /** Sobol's points, shifted at random round the unit cube [Sobol1967]. */
    private void scatter() {
        SobolSequenceGenerator points = new SobolSequenceGenerator(codec.genes());
        double[] shift = random(codec.genes());
        int least = spent.size();
        int most = (int) Math.max(least, Math.ceil(SCATTER_FRACTION * budget));
        while (spent.size() < most && mayGoOn()) {
            double[] point = points.nextVector();
            for (int n = 0; n < point.length; n++) {
                point[n] = (point[n] + shift[n]) % 1;
            }
            value(point);
        }
    }

    private void evolve(double step) {
        int before = spent.size() + (int) Math.min(Integer.MAX_VALUE / 2, refused);
        int population = 4 + (int) Math.floor(3 * Math.log(codec.genes()));
        CMAESOptimizer optimiser = new CMAESOptimizer(Integer.MAX_VALUE, 0, true, 0, 0, random, false,
                new SimpleValueChecker(-1, 1e-9));
        try {
            optimiser.optimize(new MaxEval(REFUSALS_PER_TRIAL * population * 10),
                    new ObjectiveFunction(this::value), GoalType.MINIMIZE,
                    new CMAESOptimizer.PopulationSize(population), new CMAESOptimizer.Sigma(filled(step)),
                    new InitialGuess(best.clone()), new SimpleBounds(filled(0), filled(1)));
        } catch (TooManyEvaluationsException lost) {
            refused += population;
        }
        if (spent.size() + (int) Math.min(Integer.MAX_VALUE / 2, refused) == before) {
            throw new Spent();
        }
    }

    /** The value of numbers: of what the tank does where the layout is allowed, of how far off it is where not. */
    private double value(double[] genes) {
        if (!mayGoOn()) {
            throw new Spent();
        }
        List<Pump> pumps = codec.pumps(genes);
        Scenario scenario = task.with(pumps);
        double breach = rules.breachM(scenario, task.pieces());
        double value;
        if (breach > 0) {
            refused++;
            value = Objective.refused(breach);
        } else {
            value = run(scenario);
        }
        keep(genes, value);
        return value;
    }

    private double run(Scenario scenario) {
        Ranked one = task.rank(trials.of(scenario));
        if (spent.add(one.trial().key())) {
            ranked.add(one);
        }
        return one.value();
    }

    private void keep(double[] genes, double value) {
        if (value < bestValue) {
            best = genes.clone();
            bestValue = value;
        }
    }

    private double[] random(int count) {
        double[] numbers = new double[count];
        Arrays.setAll(numbers, n -> random.nextDouble());
        return numbers;
    }

    private double[] filled(double value) {
        double[] numbers = new double[codec.genes()];
        Arrays.fill(numbers, value);
        return numbers;
    }

    /** Best first; of equal ones the earlier. */
    static List<Ranked> sorted(List<Ranked> all) {
        return all.stream().sorted(Comparator.comparingDouble(Ranked::value)).toList();
    }
}
