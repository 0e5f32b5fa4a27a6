/* FuelMath from C: checked formulas of an engine's fuel delivery, one by one or down columns, and whole systems.
   Made from the catalog; do not edit. Link with FuelMath.Native.so. */
#ifndef FUELMATH_H
#define FUELMATH_H

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What a call returns: zero, or why it was refused. Functions that return a size return the negative number.
   Nothing is thrown, no pointer is kept, every function may be called from several threads at once. */
enum fuelmath_status {
    FUELMATH_FINE = 0,
    FUELMATH_COUNT = 1,         /* more or fewer arguments than the formula has */
    FUELMATH_OUTSIDE_RANGE = 2, /* an argument is outside its range, or not a number */
    FUELMATH_OUTSIDE_BOUND = 3, /* an argument is outside a range that depends on others */
    FUELMATH_NO_RESULT = 4,     /* the arguments have no finite result */
    FUELMATH_CALL = 5,          /* no such formula, a null pointer, a negative count */
    FUELMATH_DOCUMENT = 6,      /* a document is refused */
    FUELMATH_SYSTEM = 7,        /* a system is refused, or has no solution */
    FUELMATH_FAILURE = 8        /* a mistake inside the library */
};

enum fuelmath_units { FUELMATH_SI = 0, FUELMATH_CUSTOMARY = 1 };

/* How many formulas the list has. */
int32_t fuelmath_count(void);

/* Formula number `formula` as JSON: name, arguments with kinds, units and ranges, bounds, sources, an example.
   Writes what fits into `capacity` bytes, zero-terminated, and returns the bytes of the whole without the zero. */
int32_t fuelmath_describe(int32_t formula, char *text, int32_t capacity);

/* One checked call. `result` is written only where the call returns FUELMATH_FINE. */
int32_t fuelmath_call(int32_t formula, int32_t units, const double *arguments, int32_t count, double *result);

/* A formula down columns, in SI units. Argument i is columns[i], one number a row, or where that is null numbers[i]
   in all rows; either array may be null. A row that a checked call would refuse gives "not a number" and is counted;
   `first_bad_row` counts from 0 and is -1 where every row has a result. Both may be null. The results may be one of
   the columns, row upon row, and must not overlap one otherwise. */
int32_t fuelmath_column(int32_t formula, const double *const *columns, const double *numbers, int32_t count,
                        int64_t rows, double *results, int64_t *bad_rows, int64_t *first_bad_row);

/* Why the last refused call of this thread was refused, in words. Sizes as for fuelmath_describe. */
int32_t fuelmath_message(char *text, int32_t capacity);

/* A system document at the operating points of a second document, both UTF-8: verdict, findings and tables as JSON.
   Sizes as for fuelmath_describe; asking again with more room solves again. Not in a library of formulas only. */
int32_t fuelmath_solve(const char *system, int32_t system_bytes, const char *points, int32_t points_bytes,
                       char *answer, int32_t capacity);

/* The places of the formulas in the list of this version, with their arguments in SI units. */
enum fuelmath_formula {
    /* The volume of ethanol and water mixed: ethanolVolume (m3), waterVolume (m3), temperatureCelsius (degC); gives (m3). */
    FUELMATH_ALCOHOL_TABLE_MIXED_VOLUME = 0,
    /* The density of ethanol and water: ethanolMassFraction (1), temperatureCelsius (degC); gives (kg/m3). */
    FUELMATH_ALCOHOL_TABLE_DENSITY = 1,
    /* The geopotential altitude of a height: height (m); gives (m). */
    FUELMATH_ATMOSPHERE_MODEL_GEOPOTENTIAL_ALTITUDE = 2,
    /* The temperature of the standard atmosphere: geopotentialAltitude (m); gives (K). */
    FUELMATH_ATMOSPHERE_MODEL_TEMPERATURE = 3,
    /* The pressure of the standard atmosphere: geopotentialAltitude (m); gives (Pa absolute). */
    FUELMATH_ATMOSPHERE_MODEL_PRESSURE = 4,
    /* The vapor pressure of water at saturation: temperature (K); gives (Pa absolute). */
    FUELMATH_ATMOSPHERE_MODEL_WATER_VAPOR_PRESSURE = 5,
    /* The density of moist air: absolutePressure (Pa absolute), temperature (K), waterPressure (Pa absolute); gives (kg/m3). */
    FUELMATH_ATMOSPHERE_MODEL_MOIST_AIR_DENSITY = 6,
    /* The mass of dry air in a volume of moist air: absolutePressure (Pa absolute), temperature (K), waterPressure (Pa absolute); gives (kg/m3). */
    FUELMATH_ATMOSPHERE_MODEL_DRY_AIR_DENSITY = 7,
    /* The loss coefficient of a conical contraction, for the smaller bore: frictionFactor (1), areaRatio (1); gives (1). */
    FUELMATH_BEND_LOSS_GRADUAL_CONTRACTION = 8,
    /* The loss coefficient of a conical expansion, for the smaller bore: frictionFactor (1), areaRatio (1); gives (1). */
    FUELMATH_BEND_LOSS_GRADUAL_EXPANSION = 9,
    /* The loss coefficient of a rounded bend: frictionFactor (1), angle (rad), sineOfHalf (1), bendRatio (1); gives (1). */
    FUELMATH_BEND_LOSS_ROUNDED_BEND = 10,
    /* The loss coefficient of a bend with a sharp inner corner: sineOfHalf (1); gives (1). */
    FUELMATH_BEND_LOSS_MITER_BEND = 11,
    /* The loss coefficient of a fitting by two constants, laminar flow included: laminarConstant (1), largeConstant (1), reynolds (1), bore (m); gives (1). */
    FUELMATH_BEND_LOSS_TWO_CONSTANTS = 12,
    /* The pressure that a bypass regulator holds: springForce (N), reference (Pa gauge), returnLine (Pa gauge), diaphragmArea (m2), seatArea (m2), slope (Pa s/m3), bypassedFlow (m3/s); gives (Pa gauge). */
    FUELMATH_BYPASS_VALVE_HELD_PRESSURE = 13,
    /* The spring force behind the set point of a bypass regulator: setDifference (Pa), setFlow (m3/s), slope (Pa s/m3), diaphragmArea (m2), seatArea (m2); gives (N). */
    FUELMATH_BYPASS_VALVE_SPRING_FORCE = 14,
    /* The coefficient of a fully open regulator from one reading: loss (Pa), density (kg/m3), flow (m3/s); gives (1/m4). */
    FUELMATH_BYPASS_VALVE_FULLY_OPEN_COEFFICIENT = 15,
    /* The pressure lost in a fully open regulator: coefficient (1/m4), density (kg/m3), flow (m3/s); gives (Pa). */
    FUELMATH_BYPASS_VALVE_FULLY_OPEN_LOSS = 16,
    /* The flow at which a regulating valve reaches its stop: margin (Pa), slope (Pa s/m3), restriction (Pa s2/m6); gives (m3/s). */
    FUELMATH_BYPASS_VALVE_FULLY_OPEN_FLOW = 17,
    /* The oxygen that burns a fuel completely: carbon (1), hydrogen (1), sulfur (1), oxygen (1); gives (1). */
    FUELMATH_COMBUSTION_OXYGEN_DEMAND = 18,
    /* The stoichiometric air-fuel ratio of a fuel: carbonMassFraction (1), hydrogenMassFraction (1), oxygenMassFraction (1), airOxygenMassFraction (1); gives (1). */
    FUELMATH_COMBUSTION_STOICHIOMETRIC_AIR_FUEL_RATIO = 19,
    /* Lambda from air and fuel: airMass (kg), fuelMass (kg), stoichiometricRatio (1); gives (1). */
    FUELMATH_COMBUSTION_LAMBDA = 20,
    /* The equivalence ratio of a mixture: airFuelRatio (1), stoichiometricRatio (1); gives (1). */
    FUELMATH_COMBUSTION_EQUIVALENCE_RATIO = 21,
    /* The air-fuel ratio behind a display that shows lambda times a fixed ratio: reading (1), scaleRatio (1), stoichiometricRatio (1); gives (1). */
    FUELMATH_COMBUSTION_AIR_FUEL_RATIO_FROM_SCALE = 22,
    /* A property per mass of a blend of two, by mass: firstMassFraction (1), first (1), second (1); gives (1). */
    FUELMATH_COMBUSTION_BLEND_BY_MASS = 23,
    /* The mass fraction that a volume fraction makes: firstVolumeFraction (1), firstDensity (kg/m3), secondDensity (kg/m3); gives (1). */
    FUELMATH_COMBUSTION_MASS_FRACTION = 24,
    /* The fuel's part of a mixture by mass: airFuelRatio (1); gives (1). */
    FUELMATH_COMBUSTION_FUEL_FRACTION = 25,
    /* The air-fuel ratio from the fuel's part of a mixture: fuelFraction (1); gives (1). */
    FUELMATH_COMBUSTION_AIR_FUEL_RATIO_FROM_FUEL_FRACTION = 26,
    /* A property per mass of a blend of two, by volume: firstVolumeFraction (1), secondVolumeFraction (1), firstDensity (kg/m3), secondDensity (kg/m3), first (1), second (1); gives (1). */
    FUELMATH_COMBUSTION_MEAN_BY_VOLUME = 27,
    /* The diameter of a wire gauge: gauge (1); gives (m). */
    FUELMATH_WIRE_RESISTANCE_AWG_DIAMETER = 28,
    /* The wire gauge of an area: area (m2); gives (1). */
    FUELMATH_WIRE_RESISTANCE_AWG_FROM_AREA = 29,
    /* The area of a round conductor: diameter (m); gives (m2). */
    FUELMATH_WIRE_RESISTANCE_AREA = 30,
    /* The resistance of a length of conductor: resistivity20 (ohm m), coefficient20 (1/K), length (m), area (m2), temperatureCelsius (degC); gives (ohm). */
    FUELMATH_WIRE_RESISTANCE_RESISTANCE = 31,
    /* A measured resistance carried to another temperature: resistance (ohm), coefficient20 (1/K), measuredCelsius (degC), temperatureCelsius (degC); gives (ohm). */
    FUELMATH_WIRE_RESISTANCE_CARRIED_RESISTANCE = 32,
    /* The temperature that a resistance tells: resistance (ohm), coefficient20 (1/K), measuredCelsius (degC), resistanceNow (ohm); gives (degC). */
    FUELMATH_WIRE_RESISTANCE_TEMPERATURE_FROM_RESISTANCE = 33,
    /* The Dean number of a bent pipe: reynolds (1), curvature (1); gives (1). */
    FUELMATH_CURVED_FRICTION_DEAN_NUMBER = 34,
    /* The laminar friction factor of a bent pipe over that of a straight one, after White: dean (1); gives (1). */
    FUELMATH_CURVED_FRICTION_WHITE_LAMINAR_RATIO = 35,
    /* The laminar friction factor of a bent pipe over that of a straight one, after Mori and Nakayama: dean (1); gives (1). */
    FUELMATH_CURVED_FRICTION_MORI_NAKAYAMA_LAMINAR_RATIO = 36,
    /* The laminar friction factor of a bent pipe over that of a straight one, after Schmidt: reynolds (1), curvature (1); gives (1). */
    FUELMATH_CURVED_FRICTION_SCHMIDT_LAMINAR_RATIO = 37,
    /* The Reynolds number up to which flow stays laminar in a bent pipe: curvature (1); gives (1). */
    FUELMATH_CURVED_FRICTION_ITO_CRITICAL_REYNOLDS = 38,
    /* The turbulent friction factor of a smooth bent pipe, after Ito: reynolds (1), curvature (1); gives (1). */
    FUELMATH_CURVED_FRICTION_ITO_TURBULENT_FACTOR = 39,
    /* What a bend adds to the turbulent friction factor, after Ito: curvature (1); gives (1). */
    FUELMATH_CURVED_FRICTION_ITO_TURBULENT_ADDITION = 40,
    /* The friction factor of a bent pipe in any regime: reynolds (1), relativeRoughness (1), curvature (1); gives (1). */
    FUELMATH_CURVED_FRICTION_FACTOR = 41,
    /* The pressure lost to friction in a coiled hose: velocity (m/s), bore (m), length (m), roughness (m), coilDiameter (m), density (kg/m3), dynamicViscosity (Pa s); gives (Pa). */
    FUELMATH_CURVED_FRICTION_PRESSURE_LOSS = 42,
    /* The swept volume of a cylinder: bore (m), stroke (m); gives (m3). */
    FUELMATH_DISPLACEMENT_CYLINDER = 43,
    /* The swept volume of one chamber of a three-sided rotor: eccentricity (m), generatingRadius (m), width (m); gives (m3). */
    FUELMATH_DISPLACEMENT_ROTOR_CHAMBER = 44,
    /* The density of dry air: absolutePressure (Pa absolute), temperature (K); gives (kg/m3). */
    FUELMATH_ENGINE_AIR_AIR_DENSITY = 45,
    /* The air mass of one intake event: displacementPerEvent (m3), volumetricEfficiency (1), airDensity (kg/m3); gives (kg). */
    FUELMATH_ENGINE_AIR_AIR_MASS_PER_EVENT = 46,
    /* The fuel mass for an air mass and a lambda: airMass (kg), stoichiometricRatio (1), lambda (1); gives (kg). */
    FUELMATH_ENGINE_AIR_FUEL_MASS = 47,
    /* The events per second at a shaft speed: speedRadPerSecond (rad/s), eventsPerRevolution (1); gives (Hz). */
    FUELMATH_ENGINE_AIR_EVENTS_PER_SECOND = 48,
    /* The fuel flow that a power asks for: power (W), brakeSpecificFuelConsumption (kg/J); gives (kg/s). */
    FUELMATH_ENGINE_AIR_FUEL_FLOW_FROM_POWER = 49,
    /* The lambda that one sensor sees behind four chambers with equal air: firstLambda (1), secondLambda (1), thirdLambda (1), fourthLambda (1); gives (1). */
    FUELMATH_ENGINE_AIR_HARMONIC_MEAN_LAMBDA = 50,
    /* The efficiency of a filter from its beta ratio: betaRatio (1); gives (1). */
    FUELMATH_FILTRATION_EFFICIENCY = 51,
    /* The beta ratio of a filter from its efficiency: efficiency (1); gives (1). */
    FUELMATH_FILTRATION_BETA_RATIO = 52,
    /* The beta ratio of two filters one behind the other: first (1), second (1); gives (1). */
    FUELMATH_FILTRATION_IN_SERIES = 53,
    /* What a loaded element adds to the linear coefficient of a filter: addedLoss (Pa), dynamicViscosity (Pa s), volumeFlow (m3/s); gives (1/m3). */
    FUELMATH_FILTRATION_ADDED_COEFFICIENT = 54,
    /* The mean velocity of a flow through a round bore: volumeFlow (m3/s), bore (m); gives (m/s). */
    FUELMATH_FRICTION_VELOCITY = 55,
    /* The Reynolds number: velocity (m/s), bore (m), density (kg/m3), dynamicViscosity (Pa s); gives (1). */
    FUELMATH_FRICTION_REYNOLDS = 56,
    /* The pressure lost to friction in a straight hose or pipe: velocity (m/s), bore (m), length (m), roughness (m), density (kg/m3), dynamicViscosity (Pa s); gives (Pa). */
    FUELMATH_FRICTION_PRESSURE_LOSS = 57,
    /* The factor of laminar flow: reynolds (1); gives (1). */
    FUELMATH_FRICTION_LAMINAR_FACTOR = 58,
    /* The friction factor of turbulent flow after Colebrook and White, solved to rounding error: reynolds (1), relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_COLEBROOK_FACTOR = 59,
    /* The friction factor of turbulent flow after Swamee and Jain, an explicit approximation: reynolds (1), relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_SWAMEE_JAIN_FACTOR = 60,
    /* The friction factor of turbulent flow after Haaland, an explicit approximation: reynolds (1), relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_HAALAND_FACTOR = 61,
    /* The friction factor of turbulent flow after Serghides, an explicit approximation: reynolds (1), relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_SERGHIDES_FACTOR = 62,
    /* The friction factor of a fully rough pipe: relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_FULLY_ROUGH_FACTOR = 63,
    /* The friction factor in any regime: laminar, a straight passage, Colebrook and White: reynolds (1), relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_FACTOR = 64,
    /* The friction factor in any regime: laminar, a cubic passage, Swamee and Jain: reynolds (1), relativeRoughness (1); gives (1). */
    FUELMATH_FRICTION_FACTOR_WITH_CUBIC_PASSAGE = 65,
    /* The mass of a fuel over that of the baseline at equal lambda: baselineStoichiometricRatio (1), stoichiometricRatio (1); gives (1). */
    FUELMATH_FUEL_CHANGE_RATIOS_MASS_RATIO_AT_EQUAL_LAMBDA = 66,
    /* The mass of a fuel over that of the baseline at equal power: baselineHeatingValue (J/kg), heatingValue (J/kg); gives (1). */
    FUELMATH_FUEL_CHANGE_RATIOS_MASS_RATIO_AT_EQUAL_POWER = 67,
    /* The volume of a fuel over that of the baseline: massRatio (1), baselineDensity (kg/m3), density (kg/m3); gives (1). */
    FUELMATH_FUEL_CHANGE_RATIOS_VOLUME_RATIO = 68,
    /* The time an injector is open over that with the baseline: massRatio (1), baselineDensity (kg/m3), density (kg/m3); gives (1). */
    FUELMATH_FUEL_CHANGE_RATIOS_OPEN_TIME_RATIO = 69,
    /* The higher heating value estimated from elemental composition: carbon (1), hydrogen (1), oxygen (1), nitrogen (1), sulfur (1); gives (J/kg). */
    FUELMATH_HEATING_VALUE_HIGHER = 70,
    /* The lower heating value: water leaves as vapor: higher (J/kg), hydrogen (1); gives (J/kg). */
    FUELMATH_HEATING_VALUE_LOWER = 71,
    /* The pressure difference between foot and top of a column of fluid: density (kg/m3), height (m); gives (Pa). */
    FUELMATH_HYDROSTATICS_COLUMN_PRESSURE = 72,
    /* The compressibility of a petroleum liquid: densityAt15 (kg/m3), celsius (degC); gives (1/Pa). */
    FUELMATH_LIQUID_ELASTICITY_PETROLEUM_COMPRESSIBILITY = 73,
    /* The isothermal bulk modulus of a gasoline, an estimate: densityAt15 (kg/m3), celsius (degC); gives (Pa). */
    FUELMATH_LIQUID_ELASTICITY_GASOLINE_MODULUS = 74,
    /* How far two estimates of the bulk modulus of gasoline lie from their mean: celsius (degC); gives (1). */
    FUELMATH_LIQUID_ELASTICITY_GASOLINE_MODULUS_ERROR = 75,
    /* The bulk modulus of a quick change from that of a slow one: isothermalModulus (Pa), expansion (1/K), density (kg/m3), heatCapacity (J/(kg K)), temperature (K); gives (Pa). */
    FUELMATH_LIQUID_ELASTICITY_ISENTROPIC_MODULUS = 76,
    /* The speed of sound in a liquid: isentropicModulus (Pa), density (kg/m3); gives (m/s). */
    FUELMATH_LIQUID_ELASTICITY_SOUND_SPEED = 77,
    /* The density of a liquid under pressure: density (kg/m3), bulkModulus (Pa), pressureRise (Pa); gives (kg/m3). */
    FUELMATH_LIQUID_ELASTICITY_DENSITY_UNDER_PRESSURE = 78,
    /* The loss coefficient of a sudden contraction, for the smaller bore: areaRatio (1); gives (1). */
    FUELMATH_MINOR_LOSS_SUDDEN_CONTRACTION = 79,
    /* The pressure lost in a fitting: lossCoefficient (1), density (kg/m3), velocity (m/s); gives (Pa). */
    FUELMATH_MINOR_LOSS_PRESSURE_LOSS = 80,
    /* The loss coefficient of a sudden expansion, for the smaller bore: areaRatio (1); gives (1). */
    FUELMATH_MINOR_LOSS_SUDDEN_EXPANSION = 81,
    /* A loss coefficient carried to another bore: lossCoefficient (1), fromBore (m), toBore (m); gives (1). */
    FUELMATH_MINOR_LOSS_CARRIED_COEFFICIENT = 82,
    /* The loss coefficient of a straight length: frictionFactor (1), length (m), bore (m); gives (1). */
    FUELMATH_MINOR_LOSS_STRAIGHT_LENGTH = 83,
    /* Lambda over the lambda intended, when the controller believes another injector: airRatio (1), flowRatio (1), pressureRatio (1), effectiveWidth (s), deadTimeError (s); gives (1). */
    FUELMATH_MIXTURE_ERROR_LAMBDA_FACTOR = 84,
    /* The lambda that one sensor sees behind two unequal chambers: firstAirMass (kg), secondAirMass (kg), firstFuelMass (kg), secondFuelMass (kg), stoichiometricRatio (1); gives (1). */
    FUELMATH_MIXTURE_ERROR_MEAN_LAMBDA = 85,
    /* The mass flow through a small opening: dischargeCoefficient (1), area (m2), density (kg/m3), differentialPressure (Pa); gives (kg/s). */
    FUELMATH_ORIFICE_MASS_FLOW = 86,
    /* The volume flow through a small opening: dischargeCoefficient (1), area (m2), density (kg/m3), differentialPressure (Pa); gives (m3/s). */
    FUELMATH_ORIFICE_VOLUME_FLOW = 87,
    /* A rated mass flow carried to another pressure and density: referenceMassFlow (kg/s), referenceDifferentialPressure (Pa), referenceDensity (kg/m3), differentialPressure (Pa), density (kg/m3); gives (kg/s). */
    FUELMATH_ORIFICE_CARRIED_MASS_FLOW = 88,
    /* A rated volume flow carried to another pressure and density: referenceVolumeFlow (m3/s), referenceDifferentialPressure (Pa), referenceDensity (kg/m3), differentialPressure (Pa), density (kg/m3); gives (m3/s). */
    FUELMATH_ORIFICE_CARRIED_VOLUME_FLOW = 89,
    /* A rated mass flow carried by a measured power of pressure: referenceMassFlow (kg/s), referenceDifferentialPressure (Pa), referenceDensity (kg/m3), differentialPressure (Pa), density (kg/m3); gives (kg/s). */
    FUELMATH_ORIFICE_POWER_LAW_MASS_FLOW = 90,
    /* The pressure that a measured power law takes for a volume flow: volumeFlow (m3/s), referenceVolumeFlow (m3/s), referenceDifferentialPressure (Pa), referenceDensity (kg/m3), density (kg/m3); gives (Pa). */
    FUELMATH_ORIFICE_POWER_LAW_PRESSURE_LOSS = 91,
    /* What the flow ahead of an opening adds to its flow: diameterRatio (1); gives (1). */
    FUELMATH_ORIFICE_APPROACH_FACTOR = 92,
    /* The kinematic viscosity of a gasoline by its relative density, an estimate: relativeDensity (1), temperature (K); gives (m2/s). */
    FUELMATH_PETROLEUM_VISCOSITY_GASOLINE = 93,
    /* The viscosity of a petroleum liquid over that at 20 degrees Celsius: temperature (K); gives (1). */
    FUELMATH_PETROLEUM_VISCOSITY_RELATIVE = 94,
    /* The kinematic viscosity of an oil between two measured ones: temperature (K); gives (m2/s). */
    FUELMATH_PETROLEUM_VISCOSITY_KINEMATIC = 95,
    /* The blending index of a viscosity: kinematicViscosity (m2/s); gives (1). */
    FUELMATH_PETROLEUM_VISCOSITY_BLENDING_INDEX = 96,
    /* The viscosity that has a blending index: blendingIndex (1); gives (m2/s). */
    FUELMATH_PETROLEUM_VISCOSITY_FROM_BLENDING_INDEX = 97,
    /* The pressure lost in a filter or strainer: linear (1/m3), quadratic (1/m4), dynamicViscosity (Pa s), density (kg/m3), volumeFlow (m3/s); gives (Pa). */
    FUELMATH_POROUS_MEDIUM_PRESSURE_LOSS = 98,
    /* The oil in a volume of premix: oilPerFuel (1); gives (1). */
    FUELMATH_PREMIX_BALANCE_OIL_FRACTION = 99,
    /* The oil for a volume of fuel: fuel (m3), oilPerFuel (1); gives (m3). */
    FUELMATH_PREMIX_BALANCE_OIL = 100,
    /* The oil that a tank lacks of a premix ratio: finalVolume (m3), oilFraction (1), heldVolume (m3), heldOilFraction (1); gives (m3). */
    FUELMATH_PREMIX_BALANCE_MISSING_OIL = 101,
    /* The fuel that a tank lacks of a premix ratio: finalVolume (m3), oilFraction (1), heldVolume (m3), heldOilFraction (1); gives (m3). */
    FUELMATH_PREMIX_BALANCE_MISSING_FUEL = 102,
    /* What a closed volume yields to pressure: volume (m3), bulkModulus (Pa), swelling (1/Pa), gasVolume (m3), pressure (Pa absolute); gives (m3/Pa). */
    FUELMATH_PRESSURE_DECAY_COMPLIANCE = 103,
    /* What a closed volume gives back between two pressures: volume (m3), bulkModulus (Pa), swelling (1/Pa), gas (Pa m3), before (Pa absolute), after (Pa absolute); gives (m3). */
    FUELMATH_PRESSURE_DECAY_RELEASED_VOLUME = 104,
    /* What has leaked between two readings of pressure and temperature: volume (m3), bulkModulus (Pa), swelling (1/Pa), expansion (1/K), gas (Pa m3), before (Pa absolute), temperatureBefore (K), after (Pa absolute), temperatureAfter (K); gives (m3). */
    FUELMATH_PRESSURE_DECAY_LEAKED_VOLUME = 105,
    /* The share of the old fuel that is left after flushing: exchanges (1); gives (1). */
    FUELMATH_PRESSURE_DECAY_MIXED_RESIDUE = 106,
    /* The exchanges that leave a share of the old fuel: residue (1); gives (1). */
    FUELMATH_PRESSURE_DECAY_MIXED_EXCHANGES = 107,
    /* How long pressure takes to fall through a narrow leak: volume (m3), bulkModulus (Pa), swelling (1/Pa), gas (Pa m3), before (Pa absolute), after (Pa absolute), outside (Pa absolute), conductance (m3/(s Pa)); gives (s). */
    FUELMATH_PRESSURE_DECAY_LAMINAR_FALL_TIME = 108,
    /* How long pressure takes to fall through a hole: volume (m3), bulkModulus (Pa), swelling (1/Pa), gas (Pa m3), before (Pa absolute), after (Pa absolute), outside (Pa absolute), coefficient (m3/(s Pa^0.5)); gives (s). */
    FUELMATH_PRESSURE_DECAY_ORIFICE_FALL_TIME = 109,
    /* What a closed volume yields to pressure while its gas follows a polytropic law: volume (m3), bulkModulus (Pa), swelling (1/Pa), gasAtStart (m3), start (Pa absolute), pressure (Pa absolute), exponent (1); gives (m3/Pa). */
    FUELMATH_PRESSURE_RISE_COMPLIANCE = 110,
    /* What must be pressed into a closed volume to lift its pressure: volume (m3), bulkModulus (Pa), swelling (1/Pa), gasAtStart (m3), start (Pa absolute), end (Pa absolute), exponent (1); gives (m3). */
    FUELMATH_PRESSURE_RISE_PRESSED_IN_VOLUME = 111,
    /* The part of a pulse that delivers: width (s), deadTime (s); gives (s). */
    FUELMATH_PULSE_EFFECTIVE_WIDTH = 112,
    /* The mass of one injector pulse: staticMassFlow (kg/s), effectiveWidth (s), correction (s); gives (kg). */
    FUELMATH_PULSE_MASS = 113,
    /* The share of time that an injector is driven: width (s), period (s); gives (1). */
    FUELMATH_PULSE_DUTY_CYCLE = 114,
    /* The mean flow of a train of pulses: massPerPulse (kg), pulsesPerSecond (Hz); gives (kg/s). */
    FUELMATH_PULSE_MEAN_MASS_FLOW = 115,
    /* How much more a quadratic loss costs when four injectors draw in turn: openShare (1); gives (1). */
    FUELMATH_PULSE_QUADRATIC_LOSS_FACTOR = 116,
    /* How much more of a quadratic loss fuel meets when four injectors draw in turn: openShare (1); gives (1). */
    FUELMATH_PULSE_FLOW_WEIGHTED_LOSS_FACTOR = 117,
    /* The pulse width for a mass, in the linear range: mass (kg), staticMassFlow (kg/s), deadTime (s); gives (s). */
    FUELMATH_PULSE_TIMING_PULSE_WIDTH = 118,
    /* The pulses per second at which a width reaches a duty cycle: dutyCycle (1), pulseWidth (s); gives (Hz). */
    FUELMATH_PULSE_TIMING_RATE_AT_DUTY_CYCLE = 119,
    /* The static flow that carries a mean flow at a duty cycle: meanMassFlow (kg/s), dutyCycle (1), deadTime (s), period (s); gives (kg/s). */
    FUELMATH_PULSE_TIMING_NEEDED_STATIC_FLOW = 120,
    /* The worst that rounding a width to a step of a timer does to the mass: timerStep (s), effectiveWidth (s); gives (1). */
    FUELMATH_PULSE_TIMING_WORST_STEP_ERROR = 121,
    /* The power that raises the pressure of a flow: pressureRise (Pa), volumeFlow (m3/s); gives (W). */
    FUELMATH_PUMP_POWER_HYDRAULIC = 122,
    /* The electric power that a pump takes in: voltage (V), current (A); gives (W). */
    FUELMATH_PUMP_POWER_ELECTRIC = 123,
    /* The flow of a pump at another speed: volumeFlow (m3/s), speedRatio (1); gives (m3/s). */
    FUELMATH_PUMP_SCALING_FLOW = 124,
    /* The pressure rise of a pump at another speed: pressureRise (Pa), speedRatio (1); gives (Pa). */
    FUELMATH_PUMP_SCALING_PRESSURE_RISE = 125,
    /* The pressure rise of a rotodynamic pump in a fluid of another density: pressureRise (Pa), densityRatio (1); gives (Pa). */
    FUELMATH_PUMP_SCALING_PRESSURE_RISE_IN_FLUID = 126,
    /* The shaft power of a pump at another speed: power (W), speedRatio (1); gives (W). */
    FUELMATH_PUMP_SCALING_POWER = 127,
    /* The flow of a worn pump: volumeFlow (m3/s), flowShare (1), leakPerPressure (m3/(s Pa)), pressureRise (Pa); gives (m3/s). */
    FUELMATH_PUMP_SCALING_WORN_FLOW = 128,
    /* By how much a flow warms while it takes up a power: heat (W), density (kg/m3), specificHeat (J/(kg K)), volumeFlow (m3/s); gives (K). */
    FUELMATH_PUMP_SCALING_TEMPERATURE_RISE = 129,
    /* The pressure that a reducing regulator holds: springForce (N), reference (Pa gauge), supply (Pa gauge), diaphragmArea (m2), seatArea (m2), droop (Pa s/m3), flow (m3/s); gives (Pa gauge). */
    FUELMATH_REDUCING_VALVE_HELD_PRESSURE = 130,
    /* The spring force behind the set point of a reducing regulator: setDifference (Pa), setFlow (m3/s), setSupply (Pa gauge), droop (Pa s/m3), diaphragmArea (m2), seatArea (m2); gives (N). */
    FUELMATH_REDUCING_VALVE_SPRING_FORCE = 131,
    /* The heat capacity of a petroleum liquid, an estimate: relativeDensity (1), celsius (degC); gives (J/(kg K)). */
    FUELMATH_SATURATED_LIQUID_PETROLEUM_HEAT_CAPACITY = 132,
    /* The dynamic viscosity of iso-octane: temperature (K); gives (Pa s). */
    FUELMATH_SATURATED_LIQUID_VISCOSITY = 133,
    /* The heat capacity of methanol: temperature (K); gives (J/(kg K)). */
    FUELMATH_SATURATED_LIQUID_HEAT_CAPACITY = 134,
    /* The heat capacity of n-heptane: temperature (K); gives (J/(kg K)). */
    FUELMATH_SATURATED_LIQUID_HEAT_CAPACITY_NEAR_CRITICAL = 135,
    /* The volume of an O-ring: insideDiameter (m), section (m); gives (m3). */
    FUELMATH_SEAL_FIT_RING_VOLUME = 136,
    /* The volume between two diameters: innerDiameter (m), outerDiameter (m), length (m); gives (m3). */
    FUELMATH_SEAL_FIT_GROOVE_VOLUME = 137,
    /* How much of its groove an O-ring fills: ringVolume (m3), grooveVolume (m3); gives (1). */
    FUELMATH_SEAL_FIT_FILL = 138,
    /* How far an O-ring is stretched over its seat: seatDiameter (m), insideDiameter (m); gives (1). */
    FUELMATH_SEAL_FIT_STRETCH = 139,
    /* By which fraction stretching thins an O-ring: stretch (1), slenderness (1); gives (1). */
    FUELMATH_SEAL_FIT_SECTION_REDUCTION = 140,
    /* The squeeze of an O-ring between two walls: room (m), section (m); gives (1). */
    FUELMATH_SEAL_FIT_SQUEEZE = 141,
    /* The pressure at a pump inlet above boiling: surfacePressure (Pa absolute), density (kg/m3), height (m), pressureLoss (Pa), vaporPressure (Pa absolute); gives (Pa). */
    FUELMATH_SUCTION_PRESSURE_ABOVE_BOILING = 142,
    /* The net positive suction head available at a pump inlet: pressureAboveBoiling (Pa), density (kg/m3); gives (m). */
    FUELMATH_SUCTION_NET_POSITIVE_SUCTION_HEAD = 143,
    /* The content of a mixture of two volumes: heldContent (1), heldVolume (m3), addedContent (1), addedVolume (m3); gives (1). */
    FUELMATH_TANK_BALANCE_CONTENT_AFTER = 144,
    /* The volume that brings a tank to a content: heldContent (1), heldVolume (m3), addedContent (1), targetContent (1); gives (m3). */
    FUELMATH_TANK_BALANCE_ADDED_VOLUME = 145,
    /* Of two liquids that fill a tank to a content, the volume of the first: heldContent (1), heldVolume (m3), firstContent (1), secondContent (1), targetContent (1), room (m3), firstExpansion (1), secondExpansion (1); gives (m3). */
    FUELMATH_TANK_BALANCE_FIRST_VOLUME = 146,
    /* The content that a sensor with a straight line reports: signal (1), atNone (1), atAll (1); gives (1). */
    FUELMATH_TANK_BALANCE_CONTENT_FROM_SIGNAL = 147,
    /* The ethanol content from a shake-out with water: fuelVolume (m3), waterVolume (m3), layerVolume (m3); gives (1). */
    FUELMATH_TANK_BALANCE_APPARENT_CONTENT = 148,
    /* The temperature at which a heated tank settles: ambient (K), power (W), loss (W/K); gives (K). */
    FUELMATH_TANK_HEATING_SETTLED_TEMPERATURE = 149,
    /* The temperature of a heated tank after a time: start (K), ambient (K), power (W), loss (W/K), heatCapacity (J/K), time (s); gives (K). */
    FUELMATH_TANK_HEATING_TEMPERATURE_AFTER = 150,
    /* The temperature of a tank that empties and loses no heat: start (K), power (W), heatCapacity (J/K), drain (W/K), time (s); gives (K). */
    FUELMATH_TANK_HEATING_DRAINING_ADIABATIC = 151,
    /* The temperature of a heated tank that empties: start (K), ambient (K), power (W), loss (W/K), heatCapacity (J/K), drain (W/K), time (s); gives (K). */
    FUELMATH_TANK_HEATING_DRAINING_TEMPERATURE = 152,
    /* The loss coefficient of a tee, dividing, into the branch: share (1), areaRatio (1); gives (1). */
    FUELMATH_TEE_LOSS_DIVIDING_BRANCH = 153,
    /* The loss coefficient of a tee, dividing, along the run: share (1), areaRatio (1); gives (1). */
    FUELMATH_TEE_LOSS_DIVIDING_RUN = 154,
    /* The loss coefficient of a wye of 45 degrees, combining, from the branch: share (1), areaRatio (1); gives (1). */
    FUELMATH_TEE_LOSS_COMBINING_BRANCH = 155,
    /* The loss coefficient of a wye of 60 degrees, combining, along the run: share (1), areaRatio (1); gives (1). */
    FUELMATH_TEE_LOSS_COMBINING_RUN = 156,
    /* Volume over volume at a reference temperature: coefficient (1/K), temperatureDifference (K); gives (1). */
    FUELMATH_THERMAL_EXPANSION_LINEAR_VOLUME = 157,
    /* The expansion coefficient of a gasoline: density15 (kg/m3); gives (1/K). */
    FUELMATH_THERMAL_EXPANSION_GASOLINE_COEFFICIENT = 158,
    /* The expansion coefficient of any petroleum product: density15 (kg/m3); gives (1/K). */
    FUELMATH_THERMAL_EXPANSION_PRODUCT_COEFFICIENT = 159,
    /* The expansion coefficient of a lubricating oil: density15 (kg/m3); gives (1/K). */
    FUELMATH_THERMAL_EXPANSION_LUBRICANT_COEFFICIENT = 160,
    /* Density at a temperature over density at 15 degrees Celsius: coefficient15 (1/K), temperatureCelsius (degC); gives (1). */
    FUELMATH_THERMAL_EXPANSION_VOLUME_CORRECTION = 161,
    /* Density of a gasoline at a temperature over that at 15 degrees Celsius: density15 (kg/m3), temperatureCelsius (degC); gives (1). */
    FUELMATH_THERMAL_EXPANSION_GASOLINE_VOLUME_CORRECTION = 162,
    /* The density of pure ethanol: temperatureCelsius (degC); gives (kg/m3). */
    FUELMATH_THERMAL_EXPANSION_ETHANOL_DENSITY = 163,
    /* The density of saturated iso-octane: temperature (K); gives (kg/m3). */
    FUELMATH_THERMAL_EXPANSION_SATURATED_LIQUID_DENSITY = 164,
    /* The hoop stress in a tube wall of any thickness: pressure (Pa), insideDiameter (m), outsideDiameter (m), atDiameter (m); gives (Pa). */
    FUELMATH_TUBE_ELASTICITY_HOOP_STRESS = 165,
    /* The pressure at which a thin tube wall carries a stress: wall (m), insideDiameter (m), stress (Pa); gives (Pa). */
    FUELMATH_TUBE_ELASTICITY_THIN_WALL_PRESSURE = 166,
    /* The pressure at which a tube wall of any thickness carries a stress: insideDiameter (m), outsideDiameter (m), stress (Pa); gives (Pa). */
    FUELMATH_TUBE_ELASTICITY_THICK_WALL_PRESSURE = 167,
    /* How much a thin tube with closed, free ends swells: diameter (m), wall (m), elasticModulus (Pa), poissonRatio (1); gives (1/Pa). */
    FUELMATH_TUBE_ELASTICITY_THIN_WALL_SWELLING = 168,
    /* How much a tube of any thickness with closed, free ends swells: insideDiameter (m), outsideDiameter (m), elasticModulus (Pa), poissonRatio (1); gives (1/Pa). */
    FUELMATH_TUBE_ELASTICITY_THICK_WALL_SWELLING = 169,
    /* The vapor pressure of gasoline with ethanol, an estimate: ethanolFraction (1), ethanolPressure (Pa absolute), gasolinePressure (Pa absolute), temperature (K); gives (Pa absolute). */
    FUELMATH_VAPOR_PRESSURE_GASOLINE_WITH_ETHANOL = 170,
    /* The true vapor pressure of a gasoline from its Reid vapor pressure: reidPressure (Pa absolute), temperature (K); gives (Pa absolute). */
    FUELMATH_VAPOR_PRESSURE_FROM_REID = 171,
    /* The vapor pressure of a pure substance after Antoine: a (1), b (K), c (K), temperature (K); gives (Pa absolute). */
    FUELMATH_VAPOR_PRESSURE_ANTOINE = 172,
    /* The vapor pressure of ethanol after Wagner: temperature (K); gives (Pa absolute). */
    FUELMATH_VAPOR_PRESSURE_WAGNER = 173,
    /* The vapor pressure of n-heptane after Wagner, with his first exponents: temperature (K); gives (Pa absolute). */
    FUELMATH_VAPOR_PRESSURE_WAGNER_ORIGINAL = 174,
    FUELMATH_FORMULAS = 175
};

#ifdef __cplusplus
}
#endif
#endif
