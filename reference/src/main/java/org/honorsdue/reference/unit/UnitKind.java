package org.honorsdue.reference.unit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The kinds of unit, those of the tables and those that stand on papers and are not in the tables yet. Named as the
 * tables of organization of 1942-1945 named them.
 */
public enum UnitKind {
    INFANTRY_DIVISION(Echelon.DIVISION, Series.INFANTRY_DIVISION, "Infantry Division"),
    ARMORED_DIVISION(Echelon.DIVISION, Series.ARMORED_DIVISION, "Armored Division"),
    AIRBORNE_DIVISION(Echelon.DIVISION, Series.AIRBORNE_DIVISION, "Airborne Division"),
    CAVALRY_DIVISION(Echelon.DIVISION, Series.CAVALRY_DIVISION, "Cavalry Division"),
    MOUNTAIN_DIVISION(Echelon.DIVISION, Series.MOUNTAIN_DIVISION, "Mountain Division"),
    CORPS(Echelon.CORPS, Series.CORPS, "Corps"),
    ARMORED_CORPS(Echelon.CORPS, Series.ARMORED_CORPS, "Armored Corps"),
    ARMY(Echelon.ARMY, Series.ARMY, "Army"),
    ARMY_GROUP(Echelon.ARMY, Series.ARMY_GROUP, "Army Group"),
    AIR_FORCE(Echelon.ARMY, Series.AIR_FORCE, "Air Force"),
    SERVICE_COMMAND(Echelon.COMMAND, Series.SERVICE_COMMAND, "Service Command"),
    HEADQUARTERS(Echelon.COMMAND, Series.NAMED, "Headquarters"),
    SPECIAL_FORCE(Echelon.REGIMENT, Series.NAMED, "Special Force"),
    INFANTRY_REGIMENT(Echelon.REGIMENT, Series.INFANTRY, "Infantry Regiment"),
    PARACHUTE_INFANTRY_REGIMENT(Echelon.REGIMENT, Series.INFANTRY, "Parachute Infantry Regiment"),
    GLIDER_INFANTRY_REGIMENT(Echelon.REGIMENT, Series.INFANTRY, "Glider Infantry Regiment"),
    ARMORED_INFANTRY_REGIMENT(Echelon.REGIMENT, Series.ARMORED_INFANTRY, "Armored Infantry Regiment"),
    INFANTRY_BATTALION(Echelon.BATTALION, Series.INFANTRY, "Infantry Battalion"),
    PARACHUTE_INFANTRY_BATTALION(Echelon.BATTALION, Series.INFANTRY, "Parachute Infantry Battalion"),
    ARMORED_INFANTRY_BATTALION(Echelon.BATTALION, Series.ARMORED_INFANTRY, "Armored Infantry Battalion"),
    RANGER_BATTALION(Echelon.BATTALION, Series.RANGER, "Ranger Infantry Battalion"),
    ANTITANK_BATTALION(Echelon.BATTALION, Series.ANTITANK, "Antitank Battalion"),
    ARMORED_REGIMENT(Echelon.REGIMENT, Series.ARMOR, "Armored Regiment"),
    ARMORED_GROUP(Echelon.REGIMENT, Series.ARMORED_GROUP, "Armored Group"),
    TANK_BATTALION(Echelon.BATTALION, Series.TANK, "Tank Battalion"),
    AMPHIBIAN_TANK_BATTALION(Echelon.BATTALION, Series.TANK, "Amphibian Tank Battalion"),
    AMPHIBIAN_TRACTOR_BATTALION(Echelon.BATTALION, Series.TANK, "Amphibian Tractor Battalion"),
    TANK_DESTROYER_GROUP(Echelon.REGIMENT, Series.TANK_DESTROYER_GROUP, "Tank Destroyer Group"),
    TANK_DESTROYER_BATTALION(Echelon.BATTALION, Series.TANK_DESTROYER, "Tank Destroyer Battalion"),
    ARMORED_RECONNAISSANCE_BATTALION(
            Echelon.BATTALION, Series.ARMORED_RECONNAISSANCE, "Armored Reconnaissance Battalion"),
    CAVALRY_REGIMENT(Echelon.REGIMENT, Series.CAVALRY, "Cavalry Regiment"),
    CAVALRY_GROUP(Echelon.REGIMENT, Series.CAVALRY, "Cavalry Group, Mechanized"),
    CAVALRY_RECONNAISSANCE_SQUADRON(
            Echelon.BATTALION, Series.CAVALRY_RECONNAISSANCE, "Cavalry Reconnaissance Squadron, Mechanized"),
    CAVALRY_RECONNAISSANCE_TROOP(
            Echelon.COMPANY, Series.CAVALRY_RECONNAISSANCE_TROOP, "Cavalry Reconnaissance Troop, Mechanized"),
    FIELD_ARTILLERY_REGIMENT(Echelon.REGIMENT, Series.FIELD_ARTILLERY, "Field Artillery Regiment"),
    FIELD_ARTILLERY_GROUP(Echelon.REGIMENT, Series.FIELD_ARTILLERY_GROUP, "Field Artillery Group"),
    FIELD_ARTILLERY_BRIGADE(Echelon.BRIGADE, Series.FIELD_ARTILLERY_BRIGADE, "Field Artillery Brigade"),
    FIELD_ARTILLERY_BATTALION(Echelon.BATTALION, Series.FIELD_ARTILLERY, "Field Artillery Battalion"),
    ARMORED_FIELD_ARTILLERY_BATTALION(Echelon.BATTALION, Series.FIELD_ARTILLERY, "Armored Field Artillery Battalion"),
    PARACHUTE_FIELD_ARTILLERY_BATTALION(
            Echelon.BATTALION, Series.FIELD_ARTILLERY, "Parachute Field Artillery Battalion"),
    GLIDER_FIELD_ARTILLERY_BATTALION(Echelon.BATTALION, Series.FIELD_ARTILLERY, "Glider Field Artillery Battalion"),
    FIELD_ARTILLERY_OBSERVATION_BATTALION(
            Echelon.BATTALION, Series.FIELD_ARTILLERY_OBSERVATION, "Field Artillery Observation Battalion"),
    ANTIAIRCRAFT_ARTILLERY_GROUP(Echelon.REGIMENT, Series.ANTIAIRCRAFT_GROUP, "Antiaircraft Artillery Group"),
    ANTIAIRCRAFT_ARTILLERY_BRIGADE(Echelon.BRIGADE, Series.ANTIAIRCRAFT_BRIGADE, "Antiaircraft Artillery Brigade"),
    ANTIAIRCRAFT_ARTILLERY_BATTALION(Echelon.BATTALION, Series.ANTIAIRCRAFT, "Antiaircraft Artillery Battalion"),
    AIRBORNE_ANTIAIRCRAFT_BATTALION(Echelon.BATTALION, Series.ANTIAIRCRAFT, "Airborne Antiaircraft Battalion"),
    BARRAGE_BALLOON_BATTALION(Echelon.BATTALION, Series.ANTIAIRCRAFT, "Barrage Balloon Battalion"),
    COAST_ARTILLERY_REGIMENT(Echelon.REGIMENT, Series.COAST_ARTILLERY, "Coast Artillery Regiment"),
    COAST_ARTILLERY_BATTALION(Echelon.BATTALION, Series.COAST_ARTILLERY, "Coast Artillery Battalion"),
    ENGINEER_REGIMENT(Echelon.REGIMENT, Series.ENGINEER, "Engineer Regiment"),
    ENGINEER_GENERAL_SERVICE_REGIMENT(Echelon.REGIMENT, Series.ENGINEER, "Engineer General Service Regiment"),
    ENGINEER_SHORE_REGIMENT(Echelon.REGIMENT, Series.ENGINEER, "Engineer Shore Regiment"),
    ENGINEER_BOAT_AND_SHORE_REGIMENT(Echelon.REGIMENT, Series.ENGINEER, "Engineer Boat and Shore Regiment"),
    ENGINEER_SPECIAL_BRIGADE(Echelon.BRIGADE, Series.ENGINEER_SPECIAL_BRIGADE, "Engineer Special Brigade"),
    ENGINEER_COMBAT_GROUP(Echelon.REGIMENT, Series.ENGINEER_GROUP, "Engineer Combat Group"),
    ENGINEER_COMBAT_BATTALION(Echelon.BATTALION, Series.ENGINEER, "Engineer Combat Battalion"),
    ARMORED_ENGINEER_BATTALION(Echelon.BATTALION, Series.ENGINEER, "Armored Engineer Battalion"),
    AIRBORNE_ENGINEER_BATTALION(Echelon.BATTALION, Series.ENGINEER, "Airborne Engineer Battalion"),
    ENGINEER_AVIATION_BATTALION(Echelon.BATTALION, Series.ENGINEER, "Engineer Aviation Battalion"),
    ENGINEER_CONSTRUCTION_BATTALION(Echelon.BATTALION, Series.ENGINEER, "Engineer Construction Battalion"),
    ENGINEER_BATTALION(Echelon.BATTALION, Series.ENGINEER, "Engineer Battalion"),
    ENGINEER_COMBAT_COMPANY(Echelon.COMPANY, Series.ENGINEER_COMPANY, "Engineer Combat Company"),
    PARACHUTE_ENGINEER_COMPANY(Echelon.COMPANY, Series.ENGINEER_COMPANY, "Parachute Combat Engineer Company"),
    ENGINEER_COMPANY(Echelon.COMPANY, Series.ENGINEER_COMPANY, "Engineer Company"),
    ENGINEER_SQUADRON(Echelon.BATTALION, Series.ENGINEER, "Engineer Squadron"),
    CHEMICAL_MORTAR_BATTALION(Echelon.BATTALION, Series.CHEMICAL, "Chemical Mortar Battalion"),
    CHEMICAL_COMPANY(Echelon.COMPANY, Series.CHEMICAL_COMPANY, "Chemical Company"),
    SIGNAL_BATTALION(Echelon.BATTALION, Series.SIGNAL_BATTALION, "Signal Battalion"),
    SIGNAL_CONSTRUCTION_BATTALION(Echelon.BATTALION, Series.SIGNAL_BATTALION, "Signal Construction Battalion"),
    SIGNAL_OPERATION_BATTALION(Echelon.BATTALION, Series.SIGNAL_BATTALION, "Signal Operation Battalion"),
    SIGNAL_SERVICE_BATTALION(Echelon.BATTALION, Series.SIGNAL_BATTALION, "Signal Service Battalion"),
    SIGNAL_COMPANY(Echelon.COMPANY, Series.SIGNAL, "Signal Company"),
    ARMORED_SIGNAL_COMPANY(Echelon.COMPANY, Series.SIGNAL, "Armored Signal Company"),
    SIGNAL_TROOP(Echelon.COMPANY, Series.SIGNAL, "Signal Troop"),
    ORDNANCE_BATTALION(Echelon.BATTALION, Series.ORDNANCE_BATTALION, "Ordnance Battalion"),
    ARMORED_ORDNANCE_MAINTENANCE_BATTALION(
            Echelon.BATTALION, Series.ORDNANCE_BATTALION, "Armored Ordnance Maintenance Battalion"),
    ORDNANCE_LIGHT_MAINTENANCE_COMPANY(Echelon.COMPANY, Series.ORDNANCE, "Ordnance Light Maintenance Company"),
    ORDNANCE_COMPANY(Echelon.COMPANY, Series.ORDNANCE, "Ordnance Company"),
    QUARTERMASTER_BATTALION(Echelon.BATTALION, Series.QUARTERMASTER_BATTALION, "Quartermaster Battalion"),
    QUARTERMASTER_SQUADRON(Echelon.BATTALION, Series.QUARTERMASTER_BATTALION, "Quartermaster Squadron"),
    QUARTERMASTER_COMPANY(Echelon.COMPANY, Series.QUARTERMASTER, "Quartermaster Company"),
    QUARTERMASTER_TRUCK_COMPANY(Echelon.COMPANY, Series.QUARTERMASTER_TRUCK, "Quartermaster Truck Company"),
    QUARTERMASTER_TRUCK_BATTALION(Echelon.BATTALION, Series.QUARTERMASTER_BATTALION, "Quartermaster Truck Battalion"),
    PORT_BATTALION(Echelon.BATTALION, Series.PORT, "Port Battalion"),
    PORT_COMPANY(Echelon.COMPANY, Series.PORT_COMPANY, "Port Company"),
    RAILWAY_OPERATING_BATTALION(Echelon.BATTALION, Series.RAILWAY, "Railway Operating Battalion"),
    MILITARY_POLICE_BATTALION(Echelon.BATTALION, Series.MILITARY_POLICE_BATTALION, "Military Police Battalion"),
    MILITARY_POLICE_COMPANY(Echelon.COMPANY, Series.MILITARY_POLICE, "Military Police Company"),
    MILITARY_POLICE_PLATOON(Echelon.COMPANY, Series.MILITARY_POLICE_PLATOON, "Military Police Platoon"),
    MEDICAL_REGIMENT(Echelon.REGIMENT, Series.MEDICAL, "Medical Regiment"),
    MEDICAL_BATTALION(Echelon.BATTALION, Series.MEDICAL, "Medical Battalion"),
    ARMORED_MEDICAL_BATTALION(Echelon.BATTALION, Series.MEDICAL, "Armored Medical Battalion"),
    MEDICAL_SQUADRON(Echelon.BATTALION, Series.MEDICAL, "Medical Squadron"),
    AIRBORNE_MEDICAL_COMPANY(Echelon.COMPANY, Series.MEDICAL_COMPANY, "Airborne Medical Company"),
    MEDICAL_COMPANY(Echelon.COMPANY, Series.MEDICAL_COMPANY, "Medical Company"),
    AUXILIARY_SURGICAL_GROUP(Echelon.REGIMENT, Series.SURGICAL_GROUP, "Auxiliary Surgical Group"),
    GENERAL_HOSPITAL(Echelon.BATTALION, Series.GENERAL_HOSPITAL, "General Hospital"),
    STATION_HOSPITAL(Echelon.BATTALION, Series.STATION_HOSPITAL, "Station Hospital"),
    FIELD_HOSPITAL(Echelon.BATTALION, Series.FIELD_HOSPITAL, "Field Hospital"),
    EVACUATION_HOSPITAL(Echelon.BATTALION, Series.EVACUATION_HOSPITAL, "Evacuation Hospital"),
    SURGICAL_HOSPITAL(Echelon.BATTALION, Series.SURGICAL_HOSPITAL, "Portable Surgical Hospital"),
    CONVALESCENT_HOSPITAL(Echelon.BATTALION, Series.CONVALESCENT_HOSPITAL, "Convalescent Hospital"),
    REPLACEMENT_DEPOT(Echelon.REGIMENT, Series.REPLACEMENT_DEPOT, "Replacement Depot"),
    REPLACEMENT_BATTALION(Echelon.BATTALION, Series.REPLACEMENT_BATTALION, "Replacement Battalion"),
    REPLACEMENT_COMPANY(Echelon.COMPANY, Series.REPLACEMENT_COMPANY, "Replacement Company"),
    SERVICE_COMMAND_UNIT(Echelon.BATTALION, Series.SERVICE_COMMAND_UNIT, "Service Command Unit"),
    BOMBARDMENT_WING(Echelon.BRIGADE, Series.BOMBARDMENT_WING, "Bombardment Wing"),
    FIGHTER_WING(Echelon.BRIGADE, Series.FIGHTER_WING, "Fighter Wing"),
    TROOP_CARRIER_WING(Echelon.BRIGADE, Series.TROOP_CARRIER_WING, "Troop Carrier Wing"),
    BOMBARDMENT_GROUP(Echelon.REGIMENT, Series.BOMBARDMENT_GROUP, "Bombardment Group"),
    FIGHTER_GROUP(Echelon.REGIMENT, Series.FIGHTER_GROUP, "Fighter Group"),
    TROOP_CARRIER_GROUP(Echelon.REGIMENT, Series.TROOP_CARRIER_GROUP, "Troop Carrier Group"),
    RECONNAISSANCE_GROUP(Echelon.REGIMENT, Series.RECONNAISSANCE_GROUP, "Reconnaissance Group"),
    AIR_COMMANDO_GROUP(Echelon.REGIMENT, Series.AIR_COMMANDO, "Air Commando Group"),
    COMBAT_CARGO_GROUP(Echelon.REGIMENT, Series.COMBAT_CARGO, "Combat Cargo Group"),
    AIR_SERVICE_GROUP(Echelon.REGIMENT, Series.AIR_SERVICE_GROUP, "Air Service Group"),
    AIR_DEPOT_GROUP(Echelon.REGIMENT, Series.AIR_DEPOT_GROUP, "Air Depot Group"),
    BOMBARDMENT_SQUADRON(Echelon.BATTALION, Series.BOMBARDMENT_SQUADRON, "Bombardment Squadron"),
    FIGHTER_SQUADRON(Echelon.BATTALION, Series.FIGHTER_SQUADRON, "Fighter Squadron"),
    TROOP_CARRIER_SQUADRON(Echelon.BATTALION, Series.TROOP_CARRIER_SQUADRON, "Troop Carrier Squadron"),
    RECONNAISSANCE_SQUADRON(Echelon.BATTALION, Series.RECONNAISSANCE_SQUADRON, "Reconnaissance Squadron"),
    AIR_SERVICE_SQUADRON(Echelon.BATTALION, Series.AIR_SERVICE_SQUADRON, "Air Service Squadron"),
    ARMY_AIR_FORCES_BASE_UNIT(Echelon.BATTALION, Series.AAF_BASE_UNIT, "Army Air Forces Base Unit");

    private static final Map<Series, List<UnitKind>> BY_SERIES =
            Arrays.stream(values()).collect(Collectors.groupingBy(UnitKind::series, Collectors.toUnmodifiableList()));

    private final Echelon echelon;
    private final Series series;
    private final String title;

    UnitKind(Echelon echelon, Series series, String title) {
        this.echelon = echelon;
        this.series = series;
        this.title = title;
    }

    public Echelon echelon() {
        return echelon;
    }

    /** The run of numbers it shares with other kinds. */
    public Series series() {
        return series;
    }

    /** The name without its number. */
    public String title() {
        return title;
    }

    /** The word of the tables and the first half of an id: {@code infantry-regiment}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The id of the unit of this kind with that number. */
    public String id(int number) {
        return word() + "-" + number;
    }

    /** Kinds numbered in the same run and of the same size: the Army gave a number in it to one of them only. */
    public List<UnitKind> siblings() {
        return BY_SERIES.getOrDefault(series, List.of()).stream()
                .filter(kind -> kind != this && kind.echelon == echelon)
                .toList();
    }

    /** What the lettered parts are called. */
    public String letteredPart() {
        return switch (series) {
            case FIELD_ARTILLERY, ANTIAIRCRAFT, COAST_ARTILLERY, FIELD_ARTILLERY_OBSERVATION -> "battery";
            case CAVALRY, CAVALRY_RECONNAISSANCE -> "troop";
            default -> "company";
        };
    }

    /** Whether it had companies, batteries or troops by letter; flying units had not. */
    public boolean hasLetteredParts() {
        return series.compareTo(Series.BOMBARDMENT_WING) < 0;
    }

    /** Runs of numbers. Two kinds in one run do not both use a number at the same time. */
    public enum Series {
        INFANTRY_DIVISION,
        ARMORED_DIVISION,
        AIRBORNE_DIVISION,
        CAVALRY_DIVISION,
        MOUNTAIN_DIVISION,
        CORPS,
        ARMORED_CORPS,
        ARMY_GROUP,
        ARMY,
        AIR_FORCE,
        SERVICE_COMMAND,
        NAMED,
        INFANTRY,
        ARMORED_INFANTRY,
        RANGER,
        ANTITANK,
        ARMOR,
        ARMORED_GROUP,
        TANK,
        TANK_DESTROYER_GROUP,
        TANK_DESTROYER,
        ARMORED_RECONNAISSANCE,
        CAVALRY,
        CAVALRY_RECONNAISSANCE,
        CAVALRY_RECONNAISSANCE_TROOP,
        FIELD_ARTILLERY,
        FIELD_ARTILLERY_GROUP,
        FIELD_ARTILLERY_BRIGADE,
        FIELD_ARTILLERY_OBSERVATION,
        ANTIAIRCRAFT_GROUP,
        ANTIAIRCRAFT_BRIGADE,
        ANTIAIRCRAFT,
        COAST_ARTILLERY,
        ENGINEER,
        ENGINEER_SPECIAL_BRIGADE,
        ENGINEER_GROUP,
        ENGINEER_COMPANY,
        CHEMICAL,
        CHEMICAL_COMPANY,
        SIGNAL_BATTALION,
        SIGNAL,
        ORDNANCE_BATTALION,
        ORDNANCE,
        QUARTERMASTER_BATTALION,
        QUARTERMASTER,
        QUARTERMASTER_TRUCK,
        PORT,
        PORT_COMPANY,
        RAILWAY,
        MILITARY_POLICE_BATTALION,
        MILITARY_POLICE,
        MILITARY_POLICE_PLATOON,
        MEDICAL,
        MEDICAL_COMPANY,
        SURGICAL_GROUP,
        GENERAL_HOSPITAL,
        STATION_HOSPITAL,
        FIELD_HOSPITAL,
        EVACUATION_HOSPITAL,
        SURGICAL_HOSPITAL,
        CONVALESCENT_HOSPITAL,
        REPLACEMENT_DEPOT,
        REPLACEMENT_BATTALION,
        REPLACEMENT_COMPANY,
        SERVICE_COMMAND_UNIT,
        BOMBARDMENT_WING,
        FIGHTER_WING,
        TROOP_CARRIER_WING,
        BOMBARDMENT_GROUP,
        FIGHTER_GROUP,
        TROOP_CARRIER_GROUP,
        RECONNAISSANCE_GROUP,
        AIR_COMMANDO,
        COMBAT_CARGO,
        AIR_SERVICE_GROUP,
        AIR_DEPOT_GROUP,
        BOMBARDMENT_SQUADRON,
        FIGHTER_SQUADRON,
        TROOP_CARRIER_SQUADRON,
        RECONNAISSANCE_SQUADRON,
        AIR_SERVICE_SQUADRON,
        AAF_BASE_UNIT
    }
}
