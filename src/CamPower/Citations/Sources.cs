namespace CamPower;

/// <summary>The publications and conventions that the package's own constants, limits and formulas come from.</summary>
public static class Sources
{
    /// <summary>Resistance and temperature coefficient of annealed copper.</summary>
    public static Citation AnnealedCopper { get; } = new(
        "NBS Handbook 100, Copper Wire Tables; IEC 60028", CitationKind.Handbook, "1966; 1925",
        "100 % IACS at 20 °C: 1/58 Ω·mm²/m, 0.00393 per K");

    /// <summary>Density and specific heat of copper.</summary>
    public static Citation CopperHeat { get; } = new(
        "GNU units 2.22, definitions file; NBS Handbook 100 for the density", CitationKind.Handbook, null, "8.89 g/cm³, 0.39 J/(g·K)");

    /// <summary>Minimum conductivity of hard-drawn copper wire.</summary>
    public static Citation HardDrawnCopper { get; } = new(
        "ASTM B1, Hard-Drawn Copper Wire", CitationKind.FromMemory, null,
            "minimum conductivity: 96.16 % IACS below 0.325 in, 97.16 % from there on");

    /// <summary>The temperature coefficient of copper goes with its conductivity.</summary>
    public static Citation ProportionalCoefficient { get; } = new(
        "IEC 60028", CitationKind.FromMemory, "1925",
            "coefficient at 20 °C = 0.00393 per K × share of the conductivity of annealed copper");

    /// <summary>Resistivity and temperature coefficient of electrical-conductor aluminum.</summary>
    public static Citation ConductorAluminum { get; } = new(
        "NBS Handbook 109, Aluminum Wire Tables; IEC 60889", CitationKind.Handbook, "1972; 1987",
        "61 % IACS at 20 °C: 0.00403 per K");

    /// <summary>Heat that a volume of aluminum takes up.</summary>
    public static Citation AluminumHeat { get; } = new(
        "IEC 60949", CitationKind.FromMemory, null,
            "2.5 MJ/(m³·K) at 20 °C; agrees with the standard's K of 148 A·s^½/mm², which was seen");

    /// <summary>Minimum conductivity of copper-clad aluminum wire.</summary>
    public static Citation CopperCladAluminum { get; } = new(
        "ASTM B566, Copper-Clad Aluminum Wire", CitationKind.Standard, null,
        "minimum conductivity: class 10 A 62.9 % IACS, class 15 A 64.4 % IACS (seen in a reproduction)");

    /// <summary>Conductivity of copper-clad steel wire.</summary>
    public static Citation CopperCladSteel { get; } = new(
        "ASTM B227 and B869, Copper-Clad Steel Wire", CitationKind.Standard, null,
            "grade names: 21, 30 and 40 % IACS (seen in a reproduction)");

    /// <summary>Temperature coefficient of copper-clad steel wire.</summary>
    public static Citation CopperCladSteelTemperature { get; } = new(
        "Data sheets of copper-clad steel wire", CitationKind.FromMemory, null, "0.00378 per K at 20 °C");

    /// <summary>Temperature coefficient, density and specific heat of two metals side by side.</summary>
    public static Citation CladMixture { get; } = new(
        "Two metals side by side: conductances, masses and heats add", CitationKind.Textbook, null,
        "from the values of copper and aluminum above");

    /// <summary>The American wire gauge.</summary>
    public static Citation AmericanWireGauge { get; } = new(
        "ASTM B258, Standard Nominal Diameters and Cross-Sectional Areas of AWG Sizes", CitationKind.Standard, null,
        "d = 0.127 mm × 92^((36 − n)/39)");

    /// <summary>The circular mil.</summary>
    public static Citation CircularMil { get; } = new(
        "ASTM B258, Standard Nominal Diameters and Cross-Sectional Areas of AWG Sizes", CitationKind.Standard, null,
        "1 cmil: a circle of 0.001 in, 0.00050670748 mm² (GNU units 2.22)");

    /// <summary>Classes, nominal sizes and maximum resistances of conductors of insulated cables.</summary>
    public static Citation Iec60228 { get; } = new(
        "IEC 60228, Conductors of insulated cables", CitationKind.Standard, "2004", "Tables 1 to 3 (seen in reproductions)");

    /// <summary>Cells of the tables of IEC 60228 that were not seen in print.</summary>
    public static Citation Iec60228FromMemory { get; } = new(
        "IEC 60228, Conductors of insulated cables", CitationKind.FromMemory, "2004", "Tables 1 to 3");

    /// <summary>Properties of bare and coated conductors.</summary>
    public static Citation NecTable8 { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, null, "Chapter 9 Table 8, resistance at 75 °C (seen in reproductions)");

    /// <summary>Cells of Chapter 9 Table 8 that were not seen in print.</summary>
    public static Citation NecTable8FromMemory { get; } =
        new("NEC (NFPA 70)", CitationKind.FromMemory, null, "Chapter 9 Table 8, resistance at 75 °C");

    /// <summary>The standard sizes above 4/0 AWG.</summary>
    public static Citation KcmilSizes { get; } =
        new("NEC (NFPA 70)", CitationKind.FromMemory, null, "Chapter 9 Table 8, sizes from 250 to 2000 kcmil");

    /// <summary>The standard nominal diameters of round wire.</summary>
    public static Citation WireDiameters { get; } = new(
        "ISO 3, preferred numbers; IEC 60317-0-1, winding wires", CitationKind.FromMemory, null,
            "series R 20, for the diameters of winding wire");

    /// <summary>The added length of the strands of a flexible conductor.</summary>
    public static Citation FlexibleLay { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "2 to 5 % above solid for bunched and rope-laid conductors; 4 % is used");

    /// <summary>Resistance of a sound joint or contact.</summary>
    public static Citation ContactResistance { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "order of magnitude of one sound contact; measure where it matters");

    /// <summary>Constructions of cable that the trade uses.</summary>
    public static Citation CableConstruction { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "usual constructions of camera cable");

    /// <summary>Construction of the usual 75 Ω video cable.</summary>
    public static Citation CoaxConstruction { get; } = new(
        "Generic data of 75 Ω video cable, no single standard", CitationKind.FromMemory, null,
        "20 AWG copper center or 22 AWG copper-clad steel center, 95 % copper braid of 2.6 Ω/1000 ft");

    /// <summary>Conductor of balanced data cable.</summary>
    public static Citation CategoryCable { get; } = new(
        "ANSI/TIA-568-C.2; IEC 61156-5", CitationKind.FromMemory, null, "24 AWG solid for category 5e, 23 AWG for category 6; four pairs");

    /// <summary>Currents that insulated conductors carry continuously.</summary>
    public static Citation NecAmpacity { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, "2020 numbering; the figures since 2011",
        "Table 310.16, copper, 90 °C conductor in 30 °C air; adjustment factors of 310.15(C)(1) (seen in reproductions)");

    /// <summary>Currents of copper by installation method, for metric sizes.</summary>
    public static Citation IecAmpacity { get; } = new(
        "IEC 60364-5-52", CitationKind.FromMemory, null,
        "Table B.52.2, two loaded conductors, copper, PVC 70 °C, 30 °C air, "
            + "methods A2, B2 and C; grouping factors of Table B.52.17, item 1");

    /// <summary>Currents that wires in large bundles carry continuously.</summary>
    public static Citation AircraftBundles { get; } = new(
        "FAA AC 43.13-1B", CitationKind.Handbook, null,
        "Table 11-9, copper, 105 °C wire in 70 °C air, bundles of 33 wires and more (9 for 8 AWG and up) loaded to 20 %, at 60 000 ft");

    /// <summary>Rise of temperature in proportion to the heat that a conductor makes.</summary>
    public static Citation SelfHeating { get; } = new(
        "Steady-state heat balance of a conductor, as in IEC 60287-1-1", CitationKind.Textbook, null,
        "rise = I²·R(T)·thermal resistance; the thermal resistance is worked out of published currents");

    /// <summary>Warming of a conductor over time.</summary>
    public static Citation LumpedHeatCapacity { get; } = new(
        "Non-steady-state heat balance of a conductor, as in IEEE Std 738; lumped heat capacity, any textbook of heat transfer",
            CitationKind.Textbook, null,
        "C·dT/dt = I²·R(T) − (T − Ta)/thermal resistance, with the heat capacity C of the metal alone");

    /// <summary>From when on self-heating is worth a thought.</summary>
    public static Citation SelfHeatingPolicy { get; } = new(
        "Default policy of this package, no source", CitationKind.CommonPractice, null, "1 % of resistance, about 2.5 K; set your own");

    /// <summary>The added length of the strands of a concentric-lay conductor.</summary>
    public static Citation ConcentricLay { get; } = new(
        "ASTM B8, Concentric-Lay-Stranded Copper Conductors; NEC (NFPA 70) Chapter 9 Table 8", CitationKind.Handbook, null,
        "2 % above the solid conductor of the same area; the table's stranded rows are solid × 1.02, coarsely rounded");

    /// <summary>The linear model of resistance against temperature.</summary>
    public static Citation LinearTemperature { get; } = new(
        "IEC 60028; NBS Handbook 100", CitationKind.Handbook, null, "R(T) = R(20 °C) × (1 + α₂₀ (T − 20 °C))");

    /// <summary>The range in which the linear model of resistance is used here.</summary>
    public static Citation LinearTemperatureRange { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "range of the linear resistance model");

    /// <summary>R = ρ·L/A.</summary>
    public static Citation Resistance { get; } = new(
        "Kuphaldt, Lessons in Electric Circuits, DC", CitationKind.Textbook, null, "ch. 12, specific resistance");

    /// <summary>Ohm's and Kirchhoff's laws.</summary>
    public static Citation Kirchhoff { get; } = new(
        "Kuphaldt, Lessons in Electric Circuits, DC", CitationKind.Textbook, null, "ch. 2 and 6, Ohm's and Kirchhoff's laws");

    /// <summary>The matched load: the maximum power that a source behind a resistance can deliver.</summary>
    public static Citation MaximumPower { get; } = new(
        "Kuphaldt, Lessons in Electric Circuits, DC", CitationKind.Textbook, null, "ch. 10, maximum power transfer theorem");

    /// <summary>Derating of an enclosed switch-mode supply by ambient temperature.</summary>
    public static Citation GenericDerating { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "generic derating of an enclosed switch-mode supply");

    /// <summary>Derating of a supply by altitude.</summary>
    public static Citation GenericAltitudeDerating { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "thin air counts as warmer air above 2000 m; 3.5 K to 5 K for 1000 m, the larger is taken");

    /// <summary>How much of its rating a supply is loaded with all the time.</summary>
    public static Citation HeadroomPolicy { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "supplies are loaded to 80 % of their rated current");

    /// <summary>How far above its lowest voltage a device should stay.</summary>
    public static Citation MarginPolicy { get; } = new(
        "Default policy of this package, no source", CitationKind.CommonPractice, null, "2 % of the lowest accepted voltage; set your own");

    /// <summary>How exactly a supply is set by hand.</summary>
    public static Citation SetPointPractice { get; } = new(
        "Common practice: a handheld meter on DC volts, no source", CitationKind.CommonPractice, null, "0.5 % of the reading");

    /// <summary>How much voltage at mains frequency a video shield may carry.</summary>
    public static Citation HumPolicy { get; } = new(
        "Default policy of this package, no source", CitationKind.CommonPractice, null, "10 mV RMS along the shield; set your own");

    /// <summary>Outputs, ratings and trim of the usual distribution boxes.</summary>
    public static Citation GenericBoxes { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "12 V distribution boxes of 4, 8, 12 and 16 outputs: 1.25 A of supply an output");

    /// <summary>Prices in points, which compare changes with each other.</summary>
    public static Citation NeutralPrices { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "points; a point is about a meter of cable pulled; no money");

    /// <summary>Electronic limits as makers of boxes fit them.</summary>
    public static Citation GenericElectronicLimits { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "orders of magnitude; use those of the data sheet");

    /// <summary>What is ordered above what is drawn.</summary>
    public static Citation MaterialPractice { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "10 % slack, half a meter at each end, a fifth more fuses");

    /// <summary>How many outputs of a box are left spare.</summary>
    public static Citation SparePolicy { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "spare capacity of 20 % to 25 %; the larger is taken");

    /// <summary>When Newton's method goes down to the largest solution and never past it.</summary>
    public static Citation MonotoneNewton { get; } = new(
        "Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations in Several Variables", CitationKind.FromMemory, "1970",
        "ch. 13.3, monotone Newton theorem: convex map, inverse-positive Jacobian");

    /// <summary>Which sources deliver and which are blocked: a linear complementarity problem, settled one contradiction at a
    /// time.</summary>
    public static Citation LeastIndexPivoting { get; } = new(
        "Murty, Note on a Bard-type scheme for solving the complementarity problem, Opsearch 11", CitationKind.FromMemory, "1974",
        "the contradiction of least index changes first");

    /// <summary>Time limits of quick-acting miniature fuses.</summary>
    public static Citation Iec60127QuickActing { get; } = new(
        "IEC 60127-2, Miniature fuses: cartridge fuse-links", CitationKind.Standard, null,
        "sheet 2, quick-acting F (seen in a table of pre-arcing times that reproduces it)");

    /// <summary>a time limit of quick-acting miniature fuses, its latest time from memory.</summary>
    public static Citation Iec60127QuickActingFromMemory { get; } = new(
        "IEC 60127-2, Miniature fuses: cartridge fuse-links", CitationKind.FromMemory, null,
        "sheet 2, quick-acting F above 100 mA at 4 times rated: latest time (the earliest one was seen in a reproduction)");

    /// <summary>Time limits of time-lag miniature fuses.</summary>
    public static Citation Iec60127TimeLag { get; } = new(
        "IEC 60127-2, Miniature fuses: cartridge fuse-links", CitationKind.FromMemory, null, "sheet 3, time-lag T");

    /// <summary>What miniature fuses interrupt.</summary>
    public static Citation Iec60127BreakingCapacity { get; } = new(
        "IEC 60127-2, Miniature fuses: cartridge fuse-links", CitationKind.Standard, null,
        "breaking capacity L, E and H (seen in a note on component markings)");

    /// <summary>Time limits of small supplemental fuses.</summary>
    public static Citation Ul248 { get; } = new(
        "UL 248-14, Supplemental fuses", CitationKind.Standard, null,
        "100 %, 110 %, 135 % and 200 % of rated (seen in a generic data sheet designed to it and in a table of pre-arcing times)");

    /// <summary>Time limits of blade fuses.</summary>
    public static Citation BladeFuse { get; } = new(
        "ISO 8820-3, Road vehicles: fuse-links, type C", CitationKind.FromMemory, null, "time against current");

    /// <summary>A fuse carries its rated current continuously.</summary>
    public static Citation FuseRatedCurrent { get; } = new(
        "UL 248-14, Supplemental fuses", CitationKind.Standard, null,
        "no opening at 100 % of rated (seen in a generic data sheet designed to it); taken to hold for every fuse");

    /// <summary>What hold current, trip current and time to trip of a resettable fuse are.</summary>
    public static Citation ResettableFuse { get; } = new(
        "Usage of data sheets of polymeric resettable fuses, no source", CitationKind.CommonPractice, null,
            "definitions in still air of 20 °C");

    /// <summary>Figures of typical resettable fuses.</summary>
    public static Citation TypicalResettable { get; } = new(
        "Typical values, no source", CitationKind.FromMemory, null,
        "rounded to the careful side: time to trip at 5 times the hold current, "
            + "low minimum and high maximum resistance; replace by the data sheet's");

    /// <summary>How the currents of a polymeric resettable fuse change with ambient.</summary>
    public static Citation GenericResettableCurve { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
        "generic polymeric resettable fuse, about 1 % a kelvin, written down from memory; families differ by 0.05");

    /// <summary>By when a thermal element has opened above a current with a stated time.</summary>
    public static Citation AdiabaticOperatingTime { get; } = new(
        "IEC 60269-1, Low-voltage fuses; IEC 60127-1, Miniature fuses", CitationKind.FromMemory, null,
        "more current needs no more pre-arcing I²t, so t2·(I2/I)² bounds the time; below 10 ms the operating I²t counts, arcing included");

    /// <summary>The temperature at which a standard rates fuses.</summary>
    public static Citation FuseReferenceTemperature { get; } = new(
        "IEC 60127-1, Miniature fuses; UL 248-14, Supplemental fuses", CitationKind.FromMemory, null, "23 °C and 25 °C, each within 5 K");

    /// <summary>What the air does to a fuse of unstated re-rating.</summary>
    public static Citation UnstatedReratingPractice { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "a fifth of the rating at the most between -40 °C and 85 °C, for shorts; what the fuse carries in service stays unknown");

    /// <summary>What a repeated inrush may take of the melting I²t of a fuse.</summary>
    public static Citation InrushPractice { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "pulses age a fuse: 22 % of its melting I²t for 100,000 of them");

    /// <summary>How the resistance of a polymeric resettable fuse grows with ambient.</summary>
    public static Citation GenericResettableResistance { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
        "generic polymeric resettable fuse well below its trip, about 1 % a kelvin above 20 °C, written down from memory; families differ");

    /// <summary>The least I²t that trips a resettable fuse.</summary>
    public static Citation ResettableInrush { get; } = new(
        "Heating of a body of one thermal time constant, any textbook on heat transfer", CitationKind.Textbook, null,
        "t = -τ·ln(1 - (I_trip/I)²) gives τ from the stated time; "
            + "a pulse shorter than τ trips what just holds I_hold with I_hold²·τ: an estimate");

    /// <summary>Every live conductor is protected, and a fault is interrupted before it does harm.</summary>
    public static Citation OvercurrentProtection { get; } = new(
        "IEC 60364-4-43, Protection against overcurrent", CitationKind.FromMemory, null,
            "431 and 434: protection of live conductors, interruption of every short circuit before it does harm");

    /// <summary>The voltage that a protective device interrupts.</summary>
    public static Citation DeviceVoltageRating { get; } = new(
        "Data sheet of the protective device", CitationKind.Declared, null,
            "rated voltage: the highest at which it interrupts, stated apart for AC and DC; "
            + "the DC rating of a glass fuse is far below its AC rating");

    /// <summary>The current that a protective device carries.</summary>
    public static Citation DeviceCarriesItsRating { get; } = new(
        "Data sheet of the protective device", CitationKind.Declared, null,
            "rated or hold current, at the temperature of the air around it");

    /// <summary>How long a device rides through.</summary>
    public static Citation RideThroughPolicy { get; } = new(
        "Default policy of this package, no source", CitationKind.CommonPractice, null, "20 ms, one period of 50 Hz; set your own");

    /// <summary>How long a device is dark before it needs attention.</summary>
    public static Citation DarkForSeconds { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
        "a camera takes about a minute to start: a gap of up to 60 s looks like a restart, a longer one like a failure");

    /// <summary>What a poor contact may dissipate at its spot.</summary>
    public static Citation HotSpotPolicy { get; } = new(
        "Default policy of this package, no source", CitationKind.CommonPractice, null,
        "after the power-source classes PS1 and PS2 of IEC 62368-1, 15 W and 100 W, "
            + "the second after 5 s, from memory; IEC 60364-4-43, 434 asks to interrupt what does harm");

    /// <summary>What a continuous load is.</summary>
    public static Citation NecContinuousLoad { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, null, "Article 100, continuous load: 3 hours or more (seen in a text that quotes it)");

    /// <summary>How far fuses are loaded all the time.</summary>
    public static Citation FuseContinuousPractice { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
        "75 % of the rating of fuses by UL practice and of blade fuses, at 23 to 25 °C; IEC 60127 fuses carry their rated current");

    /// <summary>Capacitors that discharge through a resistance.</summary>
    public static Citation CapacitorDischarge { get; } = new(
        "Kuphaldt, Lessons in Electric Circuits, DC", CitationKind.Textbook, null,
            "ch. 16, RC time constants: i = (V/R)·e^(−t/RC), and so I²t = C·V²/(2R)");

    /// <summary>The two currents at which a source behind a resistance delivers a power.</summary>
    public static Citation ConstantPowerRoot { get; } = new(
        "Quadratic formula, any textbook", CitationKind.Textbook, null, "R·I² − V·I + P = 0, in the form in which nothing cancels");

    /// <summary>How much I²t a conductor withstands.</summary>
    public static Citation AdiabaticWithstand { get; } = new(
        "IEC 60364-4-43, Protection against overcurrent", CitationKind.Standard, null,
        "Table 43A and 434.5.2: I²t ≤ k²S², to 5 s (seen in an engineering note and in summaries)");

    /// <summary>Rows of the table of withstand, from memory.</summary>
    public static Citation AdiabaticWithstandFromMemory { get; } = new(
        "IEC 60364-4-43, Protection against overcurrent", CitationKind.FromMemory, null, "Table 43A: PVC 90 °C, rubber 60 °C");

    /// <summary>The adiabatic formula and its constants.</summary>
    public static Citation Iec60949 { get; } = new(
        "IEC 60949, Thermally permissible short-circuit currents", CitationKind.Standard, null,
        "I = K S √(ln((θf + β)/(θi + β))/t), Table 1 (seen in summaries)");

    /// <summary>The constant β of aluminum.</summary>
    public static Citation Iec60949AluminumBeta { get; } = new(
        "IEC 60949, Thermally permissible short-circuit currents", CitationKind.FromMemory, null, "Table 1, β of aluminum");

    /// <summary>What is printed on a jacket.</summary>
    public static Citation PrintedRating { get; } = new("The rating printed on the jacket", CitationKind.Declared);

    /// <summary>The tables that limit the power of an output.</summary>
    public static Citation PowerLimitClasses { get; } = new(
        "IEC 62368-1 Annex Q; NEC (NFPA 70) Chapter 9", CitationKind.Standard, null,
        "Tables Q.1 and Q.2; Tables 11(A) and 11(B) (partly from memory, see each figure)");

    /// <summary>Currents, powers and devices of limited power sources.</summary>
    public static Citation LimitedPower { get; } = new(
        "IEC 60950-1, 2.5", CitationKind.Standard, null,
        "Tables 2B and 2C, note 1 (seen in a summary)");

    /// <summary>The limits of a limited power source in the standard that followed.</summary>
    public static Citation LimitedPowerIec62368 { get; } = new(
        "IEC 62368-1 Annex Q", CitationKind.FromMemory, null,
            "Table Q.1: one row to 30 V, 8 A and 100 VA; above as the older table; Table Q.2 as the older 2C");

    /// <summary>A cell of those tables, from memory.</summary>
    public static Citation LimitedPowerFromMemory { get; } = new(
        "IEC 62368-1 Annex Q; IEC 60950-1, 2.5", CitationKind.FromMemory, null, "Tables Q.2 and 2C: rating of the device above 20 V");

    /// <summary>When the current and power of limited power sources are measured.</summary>
    public static Citation LimitedPowerTime { get; } = new(
        "IEC 62368-1 Annex Q; IEC 60950-1, 2.5; NEC (NFPA 70) Chapter 9, Tables 11(A) and 11(B), note 1", CitationKind.Standard, null,
        "5 s or 60 s, by edition and way of limiting (seen in a summary and in a pocket guide to the NEC of 2005)");

    /// <summary>Which overcurrent devices count for a limited power source.</summary>
    public static Citation LimitedPowerDevices { get; } = new(
        "IEC 60950-1, 2.5", CitationKind.Standard, null,
        "Table 2C: a fuse or a device that is not adjustable and does not reset by itself; "
            + "a resettable fuse counts for Table 2B only (seen in a summary)");

    /// <summary>What else than its own impedance limits a limited power source.</summary>
    public static Citation LimitedPowerRegulating { get; } = new(
        "IEC 62368-1 Annex Q", CitationKind.FromMemory, null,
        "Q.1: a regulating network, or an integrated circuit current limiter, "
            + "keeps the output within Table Q.1 in normal operation and after any single fault in it");

    /// <summary>How fast the overcurrent device of a limited power source must be.</summary>
    public static Citation LimitedPowerOpening { get; } = new(
        "IEC 62368-1 Annex Q; IEC 60950-1, 2.5", CitationKind.FromMemory, null,
        "Tables Q.2 and 2C: the rating is that of fuses and circuit breakers that open within 120 s at 210 % of the current in the table");

    /// <summary>Cells of the tables of Class 2 sources that were seen in print.</summary>
    public static Citation Class2 { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, null,
        "Chapter 9, Tables 11(A) and 11(B): 100 VA up to 30 V, 5 mA up to 150 V (seen in a trade article)");

    /// <summary>Cells of the tables of Class 2 sources, from memory.</summary>
    public static Citation Class2FromMemory { get; } = new(
        "NEC (NFPA 70)", CitationKind.FromMemory, null, "Chapter 9, Tables 11(A) and 11(B)");

    /// <summary>What holds of Class 2 where wet contact is likely.</summary>
    public static Citation Class2Notes { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, "2005", "Chapter 9, Tables 11(A) and 11(B), notes 2 and 4 (seen in a pocket guide)");

    /// <summary>What a supply gives that is set above its nominal voltage.</summary>
    public static Citation RatedPower { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "a supply trimmed up keeps its rated power: less current in proportion; trimmed down it keeps its rated current");

    /// <summary>What a supply loses.</summary>
    public static Citation EfficiencyLoss { get; } = new(
        "Definition of efficiency: power out over power in", CitationKind.Textbook, null, "loss = power out × (1/η − 1)");

    /// <summary>Current that a load of a known power and power factor takes.</summary>
    public static Citation PowerFactor { get; } = new(
        "IEC 60050-131, International Electrotechnical Vocabulary", CitationKind.FromMemory, null,
            "131-11-46: power factor = active power / apparent power");

    /// <summary>Load plugged into a receptacle.</summary>
    public static Citation NecReceptacle { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, null,
        "Table 210.21(B)(2): 12 A on 15 A (seen in texts quoting it), "
            + "16 A on 20 A and 24 A on 30 A (from memory): 80 %, as 210.20(A) has it for continuous loads");

    /// <summary>Bands in which circuit breakers trip at once.</summary>
    public static Citation BreakerBands { get; } = new(
        "IEC 60898-1, Circuit-breakers for overcurrent protection for household and similar installations", CitationKind.FromMemory, null,
            "table of the ranges of instantaneous tripping: B above 3 to 5, C above 5 to 10, D above 10 to 20 times the rated current, "
                + "sinusoidal RMS; below half a cycle nothing is said");

    /// <summary>When a residual-current device must not trip, and when it must.</summary>
    public static Citation ResidualCurrent { get; } = new(
        "IEC 61008-1, Residual current operated circuit-breakers", CitationKind.FromMemory, null,
            "rated residual non-operating current: half of the rated residual operating current");

    /// <summary>How much leakage a circuit with a residual-current device may have all the time.</summary>
    public static Citation StandingLeakage { get; } = new(
        "IEC 60364-5-53, Selection and erection of electrical equipment", CitationKind.FromMemory, null,
            "531.3.2, unwanted tripping: standing leakage of at most 0.3 times the rated residual operating current");

    /// <summary>Energy as power over time.</summary>
    public static Citation EnergyOverTime { get; } = new(
        "IEC 60050-131, International Electrotechnical Vocabulary", CitationKind.FromMemory, null, "energy = active power × time");

    /// <summary>Crest and RMS of a sine.</summary>
    public static Citation SineCrest { get; } = new(
        "IEC 60050-103, International Electrotechnical Vocabulary", CitationKind.FromMemory, null, "crest of a sine = √2 × RMS");

    /// <summary>The straight line through two points of a convex curve.</summary>
    public static Citation UnregulatedLine { get; } = new(
        "Rockafellar, Convex Analysis", CitationKind.FromMemory, "1970",
            "theorem 4.1: between two of its points a convex curve is nowhere above their chord");

    /// <summary>A rectifier that charges a large capacitor through a resistance.</summary>
    public static Citation CapacitorInput { get; } = new(
        "Schade, Analysis of Rectifier Operation, Proceedings of the IRE, July 1943", CitationKind.FromMemory, null,
            "full wave, endless capacitor: conduction of ±θ about each crest, V = Vo·cos θ, I in proportion to sin θ - θ·cos θ");

    /// <summary>Which line voltage a supply is for.</summary>
    public static Citation SupplyInputVoltage { get; } = new(
        "IEC 62368-1, Audio/video, information and communication technology equipment", CitationKind.FromMemory, null,
        "Annex F.3.3, marking of rated voltage: equipment is for the range on its label and no other");

    /// <summary>How long an enclosure takes to warm.</summary>
    public static Citation EnclosureWarming { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
        "heat capacity of a box and its supply over what its faces give off: half an hour and more; "
            + "in 5 min it warms by less than the quarter of its rise by which the model may be off");

    /// <summary>Emissivity of paint.</summary>
    public static Citation PaintEmissivity { get; } = new(
        "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer", CitationKind.FromMemory, "6th edition, 2007",
        "Table A.11: paints of every color from 0.90 to 0.98; the least is taken");

    /// <summary>How much sunlight light gray takes up.</summary>
    public static Citation LightGrayAbsorptance { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
            "light gray and weathered: between white paint (0.26) and black (0.98)");

    /// <summary>How galvanized steel takes up sunlight and radiates heat.</summary>
    public static Citation GalvanizedSurface { get; } = new(
        "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer", CitationKind.FromMemory, "6th edition, 2007",
        "Table A.12, galvanized sheet metal: clean and new 0.65 and 0.13, oxidized and weathered 0.80 and 0.28");

    /// <summary>Wall of a plastic enclosure.</summary>
    public static Citation PlasticEnclosure { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "3 mm of a plastic of 0.2 W/(m·K), emissivity as of paint");

    /// <summary>Natural convection from a vertical plate.</summary>
    public static Citation VerticalPlate { get; } = new(
        "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer", CitationKind.FromMemory, "6th edition, 2007",
        "the larger of eq. 9.27, laminar, after Churchill and Chu: "
            + "Nu = 0.68 + 0.670 Ra^(1/4)/(1 + (0.492/Pr)^(9/16))^(4/9), and eq. 9.24, turbulent: Nu = 0.10 Ra^(1/3)");

    /// <summary>Natural convection from horizontal plates.</summary>
    public static Citation HorizontalPlate { get; } = new(
        "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer", CitationKind.FromMemory, "6th edition, 2007",
        "eq. 9.30 to 9.32: warm side up the larger of 0.54 Ra^(1/4) and 0.15 Ra^(1/3), "
            + "warm side down 0.27 Ra^(1/4); length = area over perimeter");

    /// <summary>Heat radiation between a gray surface and surroundings that enclose it.</summary>
    public static Citation GraySurface { get; } = new(
        "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer", CitationKind.FromMemory, "6th edition, 2007",
        "eq. 1.7 to 1.9: emissivity × σ × (T₁⁴ − T₂⁴)");

    /// <summary>Stefan's and Boltzmann's constant.</summary>
    public static Citation StefanBoltzmann { get; } = new(
        "CODATA recommended values of the fundamental physical constants", CitationKind.FromMemory, "2018", "exact since 2019");

    /// <summary>Standard gravity and the pressure of the air by height above the sea.</summary>
    public static Citation StandardAtmosphere { get; } = new(
        "ISO 2533, Standard atmosphere", CitationKind.FromMemory, "1975", "288.15 K and 101325 Pa at sea level, 6.5 K a kilometer");

    /// <summary>Viscosity and conductivity of air against temperature.</summary>
    public static Citation AirTransport { get; } = new(
        "White, Viscous Fluid Flow", CitationKind.FromMemory, "2nd edition, 1991",
        "Tables 1-2 and 1-3, Sutherland's law for air; agrees with Incropera's Table A.4 within 1.5 % from 200 K to 400 K");

    /// <summary>Specific heat of air.</summary>
    public static Citation AirHeat { get; } = new(
        "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer", CitationKind.FromMemory, "6th edition, 2007",
            "Table A.4, air at 300 K");

    /// <summary>Heat flows from the air in a sealed enclosure to its wall, through it, and on to the air around.</summary>
    public static Citation EnclosureHeatBalance { get; } = new(
        "Steady-state heat balance with surface films in series, as ISO 6946 does for the walls of buildings", CitationKind.Textbook, null,
        "each film is still air: natural convection and radiation added");

    /// <summary>The range in which the model of a sealed enclosure was held against other figures.</summary>
    public static Citation EnclosureRange { get; } = new(
        "Range in which this package holds its enclosure model against published figures, no source", CitationKind.CommonPractice, null,
        "air data from 200 K to 400 K; faces large enough for the correlations of plates");

    /// <summary>The ranges of the models of this package.</summary>
    public static Citation ValidatedRange { get; } = new(
        "Range in which this package holds a model against published figures, no source", CitationKind.CommonPractice, null,
        "of an enclosure 100 mm to 2 m and 200 K to 400 K; "
            + "of a conductor's ampacity its published sizes and 28 AWG; of a protective device its ambient curve");

    /// <summary>The strongest sunlight that equipment is tested with.</summary>
    public static Citation PeakSun { get; } = new(
        "IEC 60068-2-5, Simulated solar radiation; MIL-STD-810G, method 505", CitationKind.FromMemory, null, "1120 W/m²");

    /// <summary>What a thin conductor carries, from what a larger one carries.</summary>
    public static Citation SmallConductor { get; } = new(
        "Heat transfer from a slender cylinder, any textbook", CitationKind.Textbook, null,
        "the smaller a wire, the more heat leaves a unit of its surface: "
            + "with no more than that of the smallest tabled one, thermal resistance ∝ 1/d and current ∝ d^1.5");

    /// <summary>The largest protective device of a small conductor.</summary>
    public static Citation NecSmallConductors { get; } = new(
        "NEC (NFPA 70)", CitationKind.Standard, "2011 and later",
            "240.4(D), small conductors, 14 AWG and larger (seen in a page that quotes it)");

    /// <summary>What copper of 14, 12 and 10 AWG may carry.</summary>
    public static Citation NecLoadOfSmallConductors { get; } = new(
        "NEC (NFPA 70)", CitationKind.FromMemory, "2011 and later",
            "Table 310.16, 60 °C column: 15 A, 20 A and 30 A in 30 °C; 240.4(D) holds warmer insulation to the same");

    /// <summary>The largest protective device of 18 and 16 AWG.</summary>
    public static Citation NecSmallConductorsFromMemory { get; } = new(
        "NEC (NFPA 70)", CitationKind.FromMemory, "2011 and later", "240.4(D)(1) and (2), 18 and 16 AWG copper; (6), 10 AWG aluminum");

    /// <summary>The largest protective device of the thin wires that building codes leave out.</summary>
    public static Citation AircraftProtectors { get; } = new(
        "FAA AC 43.13-1B", CitationKind.Handbook, null,
            "Table 11-3, DC wire and circuit protector chart, fuse column, 22 and 20 AWG copper");

    /// <summary>How a conductor is landed in a terminal.</summary>
    public static Citation TerminalWorkmanship { get; } = new(
        "NEC (NFPA 70) 110.14; IEC 60364-5-52, clause 526", CitationKind.FromMemory, null,
            "electrical connections: whole conductor in the clamp, the maker's torque");

    /// <summary>How a cable enters a metal enclosure.</summary>
    public static Citation CableEntries { get; } = new(
        "NEC (NFPA 70) 300.4 and 314.17; IEC 60364-5-52, clause 522.8", CitationKind.FromMemory, null,
            "protection against abrasion where a cable enters metal");

    /// <summary>Voltage class and current of the barrel plugs whose size tells their voltage.</summary>
    public static Citation UnifiedBarrelPlugs { get; } = new(
        "EIAJ RC-5320A, unified polarity power connectors", CitationKind.Standard, null, "classes 1 to 5 (seen in an encyclopedia's page)");

    /// <summary>The voltage class, from memory.</summary>
    public static Citation UnifiedBarrelPlugsFromMemory { get; } = new(
        "EIAJ RC-5320A, unified polarity power connectors", CitationKind.FromMemory, null, "class 5, 13.5 V to 18 V");

    /// <summary>The rating of the common barrel plug.</summary>
    public static Citation CommonBarrel { get; } = new(
        "IEC 60130-10, concentric connectors, type A", CitationKind.FromMemory, null,
        "5.5 mm with a pin of 2.1 or 2.5 mm: rated 1 A to 5 A at 12 V to 24 V by its maker; "
            + "the least is taken where the maker says nothing");

    /// <summary>What a connector is rated for.</summary>
    public static Citation ConnectorRating { get; } = new(
        "Data sheet of the connector, or the class that it is of", CitationKind.Declared, null, "rated current of each contact");

    /// <summary>Torque of small screw terminals.</summary>
    public static Citation TerminalTorque { get; } = new(
        "IEC 60998-2-1, Connecting devices; UL 486A-486B and NEC (NFPA 70) Annex I", CitationKind.FromMemory, null,
        "M2.5 and M3 screws; slotted screws for 18 to 10 AWG with a slot of no more than 1/4 in");

    /// <summary>Wire range of small screw terminals.</summary>
    public static Citation ScrewTerminals { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null, "screw terminals of 5 mm pitch take 24 to 12 AWG");

    /// <summary>How far extra-low voltage goes.</summary>
    public static Citation ExtraLowVoltage { get; } = new(
        "IEC 61140; IEC 61558-1", CitationKind.Standard, null,
        "3.7.16 of the second, safety extra-low voltage: 50 V AC, 120 V DC free of ripple (seen in an entry of the IEC's terminology)");

    /// <summary>The voltage up to which a part may be touched in household equipment.</summary>
    public static Citation AccessibleVoltage { get; } = new(
        "IEC 60335-1", CitationKind.Standard, null,
        "3.4.2, safety extra-low voltage of household equipment: 60 V DC, 42.4 V peak AC (seen in an entry of the IEC's terminology)");

    /// <summary>What is taken for an insulation that is not stated.</summary>
    public static Citation InsulationNotStated { get; } = new(
        "NEC (NFPA 70)", CitationKind.FromMemory, "2020 numbering", "Table 310.16: its lowest column is that of 60 °C");

    /// <summary>A protective device is rated for no more than its conductor carries, and opens for certain at no more than 1.45 times
    /// that.</summary>
    public static Citation OverloadCoordination { get; } = new(
        "IEC 60364-4-43, Protection against overcurrent; NEC (NFPA 70) 240.4", CitationKind.FromMemory, null,
            "433.1: In ≤ Iz, I2 ≤ 1.45 Iz");

    /// <summary>Largest protective device behind a transformer.</summary>
    public static Citation TransformerProtection { get; } = new(
        "NEC (NFPA 70)", CitationKind.FromMemory, null,
        "Table 450.3(B), secondary protection: 125 % of the rated current, 167 % below 9 A; IEC 61558 asks for the same by test");

    /// <summary>A convention of the trade with no published source.</summary>
    public static Citation CommonPractice { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice);

    /// <summary>Capacity of a battery against its current.</summary>
    public static Citation Peukert { get; } = new(
        "W. Peukert, capacity of lead accumulators against the current of discharge", CitationKind.Handbook, "1897",
        "rated-time form, t = H (C/(I H))^k");

    /// <summary>Size of a lead-acid battery against its temperature.</summary>
    public static Citation Ieee485Temperature { get; } = new(
        "IEEE 485, sizing of lead-acid batteries", CitationKind.FromMemory, null,
        "Table 1: temperature correction factors for cell size, 1.00 at 25 °C");

    /// <summary>Size of a battery against its age.</summary>
    public static Citation Ieee485Aging { get; } = new(
        "IEEE 485, sizing of lead-acid batteries", CitationKind.FromMemory, null, "replace at 80 % of the rated capacity");

    /// <summary>Margin of a standby battery.</summary>
    public static Citation Nfpa72Margin { get; } = new(
        "NFPA 72, secondary power supplies", CitationKind.FromMemory, null, "10.6.7.2.1: 20 % above the calculated capacity");

    /// <summary>Typical figures of sealed lead-acid batteries.</summary>
    public static Citation LeadAcidBattery { get; } = new(
        "Common practice, no source", CitationKind.FromMemory, null,
        "valve-regulated lead-acid cell: open-circuit voltage is the density of the acid plus 0.84 V; float 2.25 V to 2.30 V, -3 mV/K; " +
        "end 1.75 V; 93 %, 85 % and 60 % of the 20 h capacity at 10 h, 5 h and 1 h; charge factor 1.2; " +
        "charging up to 2.45 V a cell and 0.3 C");

    /// <summary>Voltage of a sealed lead-acid battery as it is discharged.</summary>
    public static Citation LeadAcidDischarge { get; } = new(
        "Common practice, no source", CitationKind.FromMemory, null,
        "discharge curves of 12 V valve-regulated lead-acid batteries at 0.2 C: about 12.0 V half-way, 11.4 V at 80 % of the time, " +
        "10.5 V at the end; the resistance at 1 kHz is about a third of the slope under a load of hours");

    /// <summary>Typical figures of lithium iron phosphate batteries.</summary>
    public static Citation LithiumIronPhosphateBattery { get; } = new(
        "Common practice, no source", CitationKind.FromMemory, null,
        "lithium iron phosphate: 3.2 V to 3.3 V a cell over most of the charge, end 2.5 V; charging from 0 °C, up to 3.65 V and 1 C");

    /// <summary>Forward voltage of a silicon rectifier.</summary>
    public static Citation SiliconRectifier { get; } = new(
        "Data sheets of 1 A silicon rectifiers", CitationKind.FromMemory, null,
            "0.93 V at 1 A, 0.7 V at 50 mA: exponential with an emission coefficient of 1.9 and 30 mΩ");

    /// <summary>The current of a Schottky diode against its voltage.</summary>
    public static Citation SchottkyDiode { get; } = new(
        "Shockley, The theory of p-n junctions in semiconductors, Bell System Technical Journal 28; data sheets of Schottky diodes",
        CitationKind.FromMemory, "1949", "I = Is·(exp(V/(n·kT/q)) − 1), n about 1.05 of a Schottky diode");

    /// <summary>Two supplies of which one is enough.</summary>
    public static Citation RedundantSupplies { get; } = new(
        "Common practice, no source", CitationKind.CommonPractice, null,
        "two supplies through diodes: each carries all, the main one is set higher by both tolerances and the drop");

    /// <summary>The resistance of a transformer's windings from its regulation.</summary>
    public static Citation Regulation { get; } = new(
        "Transformer handbooks", CitationKind.FromMemory, null,
            "regulation = (open − rated voltage) / rated voltage; 5 to 15 % at 20 to 100 VA, most of it resistance");

    /// <summary>Rectifiers with a capacitor: conduction angle, form factor and ripple.</summary>
    public static Citation RectifierDesign { get; } = new(
        "Schade, Analysis of Rectifier Operation, Proceedings of the IRE 31", CitationKind.FromMemory, "1943",
            "charging through a resistance: tan θ − θ = π Rs/RL of a half-wave, half of that of a full-wave one");

    /// <summary>Diameters of round copper wire.</summary>
    public static Citation WireDiameter { get; } = new(
        "ASTM B258, standard nominal diameters of AWG round wire; ASTM B3, soft or annealed copper wire", CitationKind.FromMemory, null,
        "diameter within 1 % of the nominal one, so resistance within 2 %");

    /// <summary>Standard uncertainty of a range.</summary>
    public static Citation UncertaintyGuide { get; } = new(
        "JCGM 100, Evaluation of measurement data: guide to the expression of uncertainty in measurement", CitationKind.FromMemory, "2008",
        "4.3.7 rectangular, half width over √3; 4.3.9 triangular, half width over √6; 5.1.2 combination");

    /// <summary>The inverse of the normal distribution.</summary>
    public static Citation NormalQuantile { get; } = new(
        "M. J. Wichura, Algorithm AS 241: the percentage points of the normal distribution, Applied Statistics 37", CitationKind.FromMemory,
        "1988", "PPND16");

    /// <summary>A generator of random numbers that is a function of a counter.</summary>
    public static Citation CounterGenerator { get; } = new(
        "J. K. Salmon and others, Parallel random numbers: as easy as 1, 2, 3, SC11", CitationKind.FromMemory, "2011", "Philox4x32-10");

    /// <summary>What the user of the library states.</summary>
    public static Citation StatedByUser { get; } = new("Stated by the user", CitationKind.Declared);

    /// <summary>What the site states of one of its parts.</summary>
    public static Citation StatedBySite { get; } = new("Stated by the site", CitationKind.Declared);
}
