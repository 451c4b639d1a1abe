package slackwater.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.analysis.Figures;
import slackwater.analysis.Verdict;
import slackwater.report.CsvText;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.search.Finding;
import slackwater.search.Front;
import slackwater.search.Offer;
import slackwater.search.PumpWords;
import slackwater.search.Sturdiness;
import slackwater.search.Wishes;

/** Which pumps to buy, in a keeper's words. */
final class CompareText {
    private static final String ROW = "%-34s %7s %8s %5s %5s %6s %6s %6s %8s %8s %7s %6s";

    private final List<Offer> offers;
    private final Scenario scenario;
    private final Wishes wishes;
    private final List<String> lines = new ArrayList<>();

    private CompareText(List<Offer> offers, Scenario scenario, Wishes wishes) {
        this.offers = offers;
        this.scenario = scenario;
        this.wishes = wishes;
    }

    /** The whole text, a line an entry. */
    static List<String> of(List<Offer> offers, Scenario scenario, Wishes wishes, Fidelities fidelities) {
        CompareText text = new CompareText(offers, scenario, wishes);
        text.table();
        text.verdict(fidelities.cellSizeM());
        text.say("%s", PlacingText.doubt(fidelities.pumpFraction()));
        text.say("");
        text.outages();
        text.layouts();
        text.say(PlacingText.GRAINS, "the file named beside its set");
        text.say("Prices and figures are those of the catalogue; speeds are estimates, good for comparing. %s.",
                PlacingText.tariff(wishes));
        return List.copyOf(text.lines);
    }

    /** One row an offer, for a spreadsheet. */
    static List<String> csv(List<Offer> offers) {
        List<String> rows = new ArrayList<>();
        rows.add("set,price,corals,in_range,certain,kept_when_off,still_percent,sand_percent,watts,quiet,kwh_per_year,"
                + "cost_per_year,lowest_output_percent,worst_outage_loses");
        for (Offer offer : offers) {
            rows.add(String.format(Locale.ROOT, "%s,%s,%s,%d,%d,%d,%s,%s,%s,%s,%s,%s,%s,%s",
                    CsvText.quoted(offer.set().label()), number(offer.set().price()),
                    offer.finding().map(found -> String.valueOf(found.corals().size())).orElse(""), offer.inRange(),
                    offer.certain(), offer.kept(),
                    offer.finding().map(found -> Figures.decimal(found.stillShareFraction() * 100, 1)).orElse(""),
                    offer.finding().map(found -> Figures.decimal(found.sandFraction() * 100, 0)).orElse(""),
                    offer.energy().map(energy -> Figures.decimal(energy.powerW(), 1)).orElse(""),
                    offer.quiet() ? "yes" : "no",
                    offer.energy().map(energy -> Figures.decimal(energy.kWhPerYear(), 0)).orElse(""),
                    offer.energy().map(energy -> Figures.decimal(energy.costPerYear(), 2)).orElse(""),
                    offer.spare().map(spare -> Figures.percentUp(spare.lowestFraction())).orElse(""),
                    worstOutage(offer).map(String::valueOf).orElse(offer.outages().isEmpty() ? "0" : "")));
        }
        return rows;
    }

    private void table() {
        int corals = scenario.corals().size();
        say(ROW, "Set of pumps", "price", "in range", "sure", "when", "still", "sand", "watts", "kWh/year", "cost/yr",
                "down", "one");
        say(ROW, "", "", "of " + corals, "", "off", "%", "%", "", "", "", "to %", "stops");
        for (Offer offer : offers) {
            Optional<Finding> found = offer.finding();
            say(ROW, cut(offer.set().label()),
                    offer.set().price().isEmpty() ? "?" : Figures.decimal(offer.set().price().getAsDouble(), 0),
                    found.isEmpty() ? "-" : String.valueOf(offer.inRange()),
                    found.isEmpty() ? "-" : String.valueOf(offer.certain()),
                    found.isEmpty() ? "-" : String.valueOf(offer.kept()),
                    found.map(one -> Figures.decimal(one.stillShareFraction() * 100, 0)).orElse("-"),
                    found.map(one -> Figures.decimal(one.sandFraction() * 100, 0)).orElse("-"),
                    offer.energy().map(one -> Figures.decimal(one.powerW(), 0) + (offer.quiet() ? "" : "!"))
                            .orElse("?"),
                    offer.energy().map(one -> Figures.decimal(one.kWhPerYear(), 0)).orElse("?"),
                    offer.energy().map(one -> Figures.decimal(one.costPerYear(), 0)).orElse("?"),
                    offer.spare().map(one -> Figures.percentUp(one.lowestFraction())).orElse("-"),
                    offer.outages().isEmpty() ? "-" : worstOutage(offer).map(lost -> "-" + lost).orElse("?"));
        }
        say("in range: by the mean as computed, with nothing that stays on it. sure: of those, how many pass for"
                + " certain, doubt and all.");
        say("when off: corals still in range with pumps 20 %% weaker or aims 5 degrees off. still: of the water close"
                + " to bed and rock.");
        say("sand: strongest gust against what moves it. !: louder than its quiet output. down to: outputs at which"
                + " every coral in range stays so and the pumps still run.");
        say("one stops: corals lost when the worst one of the pumps stops, ? where that is unknown. Dashes: no place"
                + " for that set keeps to the distances, or nothing could be computed.");
        say("");
    }

    private void verdict(double cellSizeM) {
        int corals = scenario.corals().size();
        Optional<Offer> enough = Front.cheapestInRange(offers);
        if (enough.isEmpty()) {
            Optional<Offer> most = offers.stream().filter(offer -> offer.proposal().isPresent())
                    .max(Comparator.comparingInt(Offer::inRange).thenComparing(Comparator
                            .comparingDouble((Offer offer) -> offer.set().price().orElse(0)).reversed()));
            say("None of these is enough.%s", most.map(offer -> String.format(Locale.ROOT, " The most that was found is"
                    + " %d of %d corals in range, with %s.", offer.inRange(), corals, offer.set().label())).orElse(""));
            most.ifPresent(offer -> certainty(offer, cellSizeM));
            return;
        }
        Offer best = enough.get();
        say("The cheapest with every coral in range as computed: %s%s; %d of %d pass for certain.", best.set().label(),
                price(best), best.certain(), corals);
        if (!best.isCertain()) {
            say(Front.cheapestCertain(offers).map(sure -> "The cheapest with every coral in range for certain: "
                    + sure.set().label() + price(sure) + ".").orElse("No set has every coral in range for certain."));
        }
        offers.stream().filter(other -> other.isInRange() && other.kept() > best.kept())
                .min(Comparator.comparingDouble(other -> other.set().price().orElse(Double.POSITIVE_INFINITY)))
                .ifPresent(other -> say("More money buys more safety: %s%s, keeps %d of %d when something is off, that"
                        + " one %d.", other.set().label(), price(other), other.kept(), corals, best.kept()));
        certainty(best, cellSizeM);
    }

    private static String price(Offer offer) {
        return offer.set().price().isEmpty() ? ""
                : String.format(Locale.ROOT, ", for %.0f", offer.set().price().getAsDouble());
    }

    private void certainty(Offer offer, double cellSizeM) {
        int corals = scenario.corals().size();
        int close = (int) offer.finding().orElseThrow().corals().stream()
                .filter(coral -> coral.verdict() == Verdict.MARGINAL).count();
        String sure = offer.certain() == corals ? "Sure" : offer.certain() >= corals / 2.0 ? "Fairly sure"
                : "Not sure";
        say("How sure: %s. On cells of %s, %d of %d corals pass for certain and %d are too close to call%s.",
                sure.toLowerCase(Locale.ROOT), Figures.cell(cellSizeM), offer.certain(), corals, close,
                close == 0 ? "" : "; smaller cells (--cell-cm) tell more");
        say("");
    }

    private void outages() {
        for (Offer offer : offers) {
            List<Sturdiness.Check> losing = offer.outages().stream().filter(check -> !check.holds()).toList();
            if (!losing.isEmpty()) {
                say("%s, when one stops:", offer.set().label());
                losing.forEach(check -> say("  %s: %s", check.name(), check.known()
                        ? "loses " + String.join(", ", check.fallen()) : "unknown, since a run failed"));
            }
        }
        say("");
    }

    private void layouts() {
        for (int n = 0; n < offers.size(); n++) {
            Offer offer = offers.get(n);
            if (offer.proposal().isPresent() && !offer.set().models().isEmpty()) {
                say("%s (set-%d.toml)", offer.set().label(), n);
                for (Pump pump : offer.proposal().get().confirmed().trial().pumps()) {
                    say("  %s: %s.", pump.name(), PumpWords.of(scenario.tank(), pump));
                }
                List<String> out = offer.finding().orElseThrow().outNames();
                if (!out.isEmpty()) {
                    say("  Out of range: %s.", String.join(", ", out));
                }
            }
        }
        say("");
    }

    /** Corals lost when the worst one stops; empty without pumps, and where one of them could not be tried. */
    private static Optional<Integer> worstOutage(Offer offer) {
        return offer.outages().stream().allMatch(Sturdiness.Check::known)
                ? offer.outages().stream().map(check -> check.fallen().size()).max(Comparator.naturalOrder())
                : Optional.empty();
    }

    private static String number(OptionalDouble value) {
        return value.isEmpty() ? "" : Figures.decimal(value.getAsDouble(), 2);
    }

    private static String cut(String name) {
        return name.length() <= 34 ? name : name.substring(0, 33) + "\u2026";
    }

    private void say(String format, Object... values) {
        lines.add(String.format(Locale.ROOT, format, values).replaceAll("\\p{Cntrl}|\\p{Cf}", "?").stripTrailing());
    }
}
