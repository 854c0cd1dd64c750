package org.honorsdue.reference.unit;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.TableSource;
import org.jspecify.annotations.Nullable;

/**
 * The tables of units, checked and immutable. Every look-up is by hash; nothing is scanned. Lists are in the order of
 * the tables.
 */
public final class UnitTables {
    private static volatile @Nullable UnitTables publishedOnce;

    private final List<Unit> units;
    private final Map<String, Unit> byId;
    private final Map<Integer, List<Unit>> byNumber;
    private final Map<KindAndNumber, List<Unit>> byKindAndNumber;
    private final Map<String, List<Membership>> parents;
    private final Map<String, List<Membership>> members;
    private final Map<String, CampaignCredit> campaigns;
    private final Map<String, List<Unit>> byCampaigns;
    private final Map<String, List<UnitAssault>> assaults;
    private final Map<String, List<UnitAward>> awards;
    private final Map<String, List<Whereabouts>> whereabouts;
    private final Map<String, OverseasHistory> overseas;
    private final Map<String, Patch> patches;
    private final Map<UnitKind, List<LetteredCompanies>> lettered;

    private UnitTables(
            List<Unit> units,
            List<Membership> memberships,
            List<CampaignCredit> campaigns,
            List<UnitAssault> assaults,
            List<UnitAward> awards,
            List<Whereabouts> whereabouts,
            List<OverseasHistory> overseas,
            List<Patch> patches,
            List<LetteredCompanies> lettered) {
        this.units = units;
        byId = index(units, Unit::id);
        byNumber = lists(
                units.stream().filter(unit -> unit.number().isPresent()).toList(),
                unit -> unit.number().orElseThrow());
        byKindAndNumber = lists(
                units.stream().filter(unit -> unit.number().isPresent()).toList(),
                unit -> new KindAndNumber(unit.kind(), unit.number().orElseThrow()));
        parents = lists(memberships, Membership::unit);
        members = lists(memberships, Membership::parent);
        this.campaigns = index(campaigns, CampaignCredit::unit);
        byCampaigns = new HashMap<>();
        for (CampaignCredit credit : campaigns) {
            for (String campaign : credit.campaigns()) {
                byCampaigns.computeIfAbsent(campaign, id -> new ArrayList<>()).add(byId.get(credit.unit()));
            }
        }
        byCampaigns.replaceAll((campaign, credited) -> List.copyOf(credited));
        this.assaults = lists(assaults, UnitAssault::unit);
        this.awards = lists(awards, UnitAward::unit);
        this.whereabouts = lists(whereabouts, Whereabouts::unit);
        this.overseas = index(overseas, OverseasHistory::unit);
        this.patches = index(patches, Patch::unit);
        this.lettered = lists(lettered, LetteredCompanies::kind);
    }

    /**
     * The tables of the program, read at the first call. A faulty table throws at every call, so that nobody goes on
     * without it.
     *
     * @throws org.honorsdue.reference.table.TableFaults with every fault of every table of units
     */
    public static UnitTables published() {
        UnitTables loaded = publishedOnce;
        if (loaded == null) {
            synchronized (UnitTables.class) {
                loaded = publishedOnce;
                if (loaded == null) {
                    loaded = load(TableSource.beside(Reference.class));
                    publishedOnce = loaded;
                }
            }
        }
        return loaded;
    }

    /**
     * Reads the tables of units of a source and checks them against each other. Campaign ids are checked by whoever
     * has the table of campaigns at hand; see {@link #campaignIds()}.
     *
     * @throws org.honorsdue.reference.table.TableFaults with every fault found
     */
    public static UnitTables load(TableSource source) {
        var faults = new FaultList();
        var rows = new UnitRows(source, faults);
        var units = rows.units();
        var memberships = rows.memberships();
        var campaigns = rows.campaigns();
        var assaults = rows.assaults();
        var awards = rows.awards();
        var whereabouts = rows.whereabouts();
        var overseas = rows.overseas();
        var patches = rows.patches();
        var lettered = rows.lettered();

        var ids = new UnitChecks(faults);
        ids.noIdTwice(units);
        ids.known(UnitRows.MEMBERSHIPS, "unit", memberships, Membership::unit);
        ids.known(UnitRows.MEMBERSHIPS, "parent", memberships, Membership::parent);
        ids.noCircle(memberships);
        ids.known(UnitRows.CAMPAIGNS, "unit", campaigns, CampaignCredit::unit);
        ids.once(UnitRows.CAMPAIGNS, campaigns, CampaignCredit::unit);
        ids.known(UnitRows.ASSAULTS, "unit", assaults, UnitAssault::unit);
        ids.known(UnitRows.AWARDS, "unit", awards, UnitAward::unit);
        ids.known(UnitRows.WHEREABOUTS, "unit", whereabouts, Whereabouts::unit);
        ids.known(UnitRows.OVERSEAS, "unit", overseas, OverseasHistory::unit);
        ids.once(UnitRows.OVERSEAS, overseas, OverseasHistory::unit);
        ids.known(UnitRows.PATCHES, "unit", patches, Patch::unit);
        ids.once(UnitRows.PATCHES, patches, Patch::unit);
        ids.noLetterTwice(lettered);
        faults.refuseIfAny();

        return new UnitTables(
                values(units),
                values(memberships),
                values(campaigns),
                values(assaults),
                values(awards),
                values(whereabouts),
                values(overseas),
                values(patches),
                values(lettered));
    }

    private static <T> List<T> values(List<Located<T>> located) {
        return located.stream().map(Located::value).toList();
    }

    private static <K, T> Map<K, T> index(List<T> values, Function<T, K> key) {
        var index = new HashMap<K, T>(values.size() * 2);
        for (T value : values) {
            index.put(key.apply(value), value);
        }
        return index;
    }

    private static <K, T> Map<K, List<T>> lists(List<T> values, Function<T, K> key) {
        Map<K, List<T>> lists = values.stream().collect(groupingBy(key));
        lists.replaceAll((k, list) -> List.copyOf(list));
        return lists;
    }

    public List<Unit> units() {
        return units;
    }

    /** The unit with that id; of the id of a part, the unit it is a part of. */
    public Optional<Unit> unit(String id) {
        return Optional.ofNullable(byId.get(UnitId.parse(id).unit()));
    }

    /** The units of that kind with that number: one as a rule, more for military police platoons. */
    public List<Unit> units(UnitKind kind, int number) {
        return byKindAndNumber.getOrDefault(new KindAndNumber(kind, number), List.of());
    }

    /** Every unit that bore that number, of whatever kind. */
    public List<Unit> numbered(int number) {
        return byNumber.getOrDefault(number, List.of());
    }

    /** The units it belonged to, directly. For a part with a tie of its own, that tie. */
    public List<Membership> parentsOf(String id) {
        List<Membership> own = parents.get(id);
        return own != null ? own : parents.getOrDefault(UnitId.parse(id).unit(), List.of());
    }

    /** The units that belonged to it, directly. */
    public List<Membership> membersOf(String unit) {
        return members.getOrDefault(unit, List.of());
    }

    /** The unit's own campaign list; empty when it has none of its own and its parents' count. */
    public Optional<CampaignCredit> campaignsOf(String unit) {
        return Optional.ofNullable(campaigns.get(unit));
    }

    /** Units whose own list names the campaign. */
    public List<Unit> creditedWith(String campaign) {
        return byCampaigns.getOrDefault(campaign, List.of());
    }

    /** Every campaign id that any table of units names. */
    public Set<String> campaignIds() {
        var ids = new HashSet<>(byCampaigns.keySet());
        assaults.values().forEach(list -> list.forEach(assault -> ids.add(assault.campaign())));
        return Set.copyOf(ids);
    }

    public List<UnitAssault> assaultsOf(String unit) {
        return assaults.getOrDefault(unit, List.of());
    }

    public List<UnitAward> awardsOf(String unit) {
        return awards.getOrDefault(unit, List.of());
    }

    public List<Whereabouts> whereaboutsOf(String unit) {
        return whereabouts.getOrDefault(unit, List.of());
    }

    public Optional<OverseasHistory> overseas(String unit) {
        return Optional.ofNullable(overseas.get(unit));
    }

    public Optional<Patch> patch(String unit) {
        return Optional.ofNullable(patches.get(unit));
    }

    /** How the lettered companies of a kind fall into battalions; empty where no table fixes it. */
    public List<LetteredCompanies> letteredCompanies(UnitKind kind) {
        return lettered.getOrDefault(kind, List.of());
    }

    /** The battalion a lettered company of that kind of unit belonged to. */
    public Optional<LetteredCompanies> battalionOf(UnitKind kind, String letter) {
        return letteredCompanies(kind).stream()
                .filter(battalion -> battalion.letters().contains(letter))
                .findFirst();
    }

    private record KindAndNumber(UnitKind kind, int number) {}
}
