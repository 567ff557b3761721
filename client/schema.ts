/** Generated from openapi.yaml by npm run openapi. */
export interface paths {
    "/v1/amplifiers/matching": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether amplifier and drivers fit, and at which load, by query
         * @description The same calculation as `matchAmplifier`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["matchAmplifierByQuery"];
        put?: never;
        /**
         * Whether amplifier and drivers fit, and at which load
         * @description Continuous RMS power of the amplifier against that of the drivers at every load they can be wired to, on one output or spread over several, single or bridged. Power is taken as published for the load and never scaled to a lower one; above the rated loads it is bounded by the voltage reached there. Two powers at one load, bridged figures of one channel, peak, maximum and total figures are refused with the reason.
         */
        post: operations["matchAmplifier"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/batches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Many calls in one
         * @description Up to 100 calls, or 1000 answered line by line, each with its own status and answer or problem, in the order of the request; one bad call spoils only itself. Calls run in parallel in worker threads. With `Accept: application/x-ndjson` or `?form=ndjson` each item leaves as a line of its own as soon as it and those before it are done, and the last line is `{"summary": …}`; a stream without it was cut. Every call is pure, so a client may ask again, with `fromIndex` for the rest only. Each call counts against the rate limit.
         */
        post: operations["runBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/boxes/drawings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Panel drawings and cut sheets
         * @description Draws the panels of a box with their dimensions, holes, saw tilts, screws, grain and what stands against them, and the sheets they are cut from; or, with `show: assembly`, a picture for each step of putting it together, with `show: templates` its round holes as large as life, in pages that A4 and Letter print. By `Accept`: `image/svg+xml` (all drawings one below the other), `image/vnd.dxf` (millimetres, closed contours and true circles on layers CUT and HOLES, POCKET_6.0 by depth, DRILL_3.0 by diameter; BEVEL_17.7 by the tilt of an edge, MARK where other parts stand, SHEET and TEXT are not cut; the sheets with everything in place, or with `show: panels` each panel once), `application/pdf` (one A4 page a drawing, to scale), or `application/json` with the layout, the cut plan and each drawing as SVG text.
         */
        post: operations["drawBox"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/boxes/model": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The box as a 3D model
         * @description Every board with its bevels, notches and holes, drivers, tubes, terminal cup and inner amplifier, each where it stands. `Accept: model/gltf-binary` gives one glTF 2.0 file in metres, y up, front towards +z, with two scenes of the same named nodes: put together, and taken apart. Sizes of a driver that are not given are drawn as usual ones.
         */
        post: operations["modelBox"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/boxes/panel-vibration": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Fundamental frequency and bending of one panel
         * @description Thin-plate figures of a flat panel with edges free to turn and with edges held: frequency, with a brace halving the longer side or with the spans given, with a driver on it, and bending under a pressure.
         */
        post: operations["checkPanelVibration"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/boxes/panels": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Panels, volume balance and clearances of a box
         * @description Gives the panels with their cut-outs, every litre that something takes from the inside, clearances and mass, from outer sizes or from a net volume. Butt joints: lid and floor are the full width by the full depth; front and back stand between them; the sides stand between all four. `Accept: text/csv` gives the cut list alone.
         */
        post: operations["layOutBox"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/boxes/sheets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Cut plan of panels on sheets
         * @description Lays panels on sheets with edge-to-edge cuts (a panel saw makes no others): kerf, trim, grain, several sheet sizes, stock and prices. Gives every cut in order with its fence setting, the offcuts, and a proved lower bound with the distance to it. `Accept: text/csv` gives the cuts alone, in the order of work.
         */
        post: operations["nestPanels"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/cautions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every kind of caution
         * @description What each caution code means, how grave it is and where its threshold comes from.
         */
        get: operations["listCautions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/cautions/{code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One kind of caution
         * @description What the code means and what to do.
         */
        get: operations["describeCaution"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Which figures each version moved
         * @description For who keeps answers: `calculation.version` of an answer finds what has moved since, and whether to ask again.
         */
        get: operations["listChanges"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/coils/wiring": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Loads that drivers and coils can present, and how to join them, by query
         * @description The same calculation as `wireCoils`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["wireCoilsByQuery"];
        put?: never;
        /**
         * Loads that drivers and coils can present, and how to join them
         * @description Every balanced way of joining coils and, for up to six coils, every series-parallel way, with the load the amplifier sees, the share of each coil, the limit of the amplifier, and the wiring of the chosen load terminal by terminal.
         */
        post: operations["wireCoils"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs/search": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The best systems from what is on the shelf
         * @description Puts every driver, in every count, on every amplifier, into every kind of box, as a plan would build it, and drops what breaks a limit or cannot be built. What is left is ranked by a weighted sum of figures in decibels of equal worth; the weights are a judgement, echoed and open to change. Each design carries the request with which /v1/plans plans exactly it; each rejection says which limit it breaks and by how much. Of the alignments that suit, the best that keeps every limit stands for its system, with the quietest port that fits; sheets and the order of work are left to the plan. At most 36 systems a call.
         */
        post: operations["searchDesigns"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/drivers/parameters": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Complete and check the small-signal set of a driver, by query
         * @description The same calculation as `completeDriverParameters`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["completeDriverParametersByQuery"];
        put?: never;
        /**
         * Complete and check the small-signal set of a driver
         * @description Takes whatever a data sheet gives and works out the rest, each value marked given, derived or assumed. Relations the sheet over-determines are checked; what the rounding of the printed digits explains is not held against the sheet; a likely slip of unit, decimal place or line is named with the value it would mean and never applied. Coils can be moved between connections. Too little given is refused, a pointer to each figure that is missing.
         */
        post: operations["completeDriverParameters"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/enclosures/response": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Curves and figures of one enclosure
         * @description Solves the acoustic network of the enclosure at each frequency. Level, excursion, air speed, impedance and group delay come from one solution; peaks, dips and half-power frequencies are refined and do not depend on the frequencies asked for. A loss Q that is absent means no such loss. Filters act on every curve but the impedance. A cabin adds the level at the seat as a curve of its own. `limits`, even empty, adds the largest level and voltage at each frequency with the limit that governs it, the losses of warm coils and fast ports, and the high-pass an unloaded cone needs. `timeResponse`, even empty, adds the step and the impulse response with settling time and overshoot. By `Accept`: `text/csv` (the curves over frequency, one column each under its name in the answer), `image/svg+xml` (the charts), or `application/json` with everything.
         */
        post: operations["computeResponse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/enclosures/sizing": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Boxes that suit a driver, what each gives and costs
         * @description Solves the published alignments for the driver in its circuit and the losses at hand, not off a lossless table: closed boxes by Qtc, vented families, passive radiators by mass and compliance, fourth-order band-passes by their edges, sixth-order ones by a search for their edges. Each candidate is then heard through the same network as /v1/enclosures/response, and says in words what it is good at, what it costs in space, whether it suits and why. A volume or tuning asked for is judged as it is.
         */
        post: operations["sizeEnclosure"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/enclosures/tolerance": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Spread of a response over the tolerances of its parts
         * @description Draws systems whose physical parameters (masses, compliances, resistances, dimensions, air temperature) scatter as stated, and gives percentile bands of level, excursion and impedance, the scatter of the chief figures, and the sensitivity of each figure to each parameter. Deterministic for a seed. fs, Q and Vas are never varied apart: they move together through the suspension. `Accept: text/csv` gives the bands alone, a row a frequency.
         */
        post: operations["computeTolerance"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The whole system in one call
         * @description From data sheets, space and supply to a system that can be built and switched on: match and wiring, enclosure, port, panels, response at full power, sheets, current, cable, fuse, signal, bill of materials, order of work, commissioning and cautions. Each part carries the request that its own resource answers in the same way; a part that cannot be done says so in its place and the others still come.
         */
        post: operations["planSystem"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/ports/sizing": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Area, count and length of a port, its air speed, and whether it fits, by query
         * @description The same calculation as `sizePort`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["sizePortByQuery"];
        put?: never;
        /**
         * Area, count and length of a port, its air speed, and whether it fits
         * @description The flow at full drive, weighed with the filters before the amplifier, comes from the acoustic network; area from the air-speed limit, length from the tuning with the ends as they stand. Each port says its speed at the tuning and at worst, its first resonance as a pipe and its length by the other way of counting ends. Where none fits, the answer lists what would, computed. A port given whole tells its tuning.
         */
        post: operations["sizePort"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/problems": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every kind of refusal
         * @description What each problem code means and which status it comes with.
         */
        get: operations["listProblems"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/problems/{code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One kind of refusal
         * @description The documentation that `type` of a problem document leads to.
         */
        get: operations["describeProblem"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/alignments": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Alignments of enclosures
         * @description What each alignment aims at, for which drivers it holds, and solved members of the vented families without losses and for a leak Q of 7. Other losses: /v1/enclosures/sizing solves for them.
         */
        get: operations["listAlignments"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/cables": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Cable sizes with section, resistance and allowable current
         * @description Allowable currents are those of a US federal regulation (boats) at 30 °C; a size between its rows is interpolated and rounded down. Ambient, bundling and metal lower them, see /v1/supply/cables.
         */
        get: operations["listCables"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/formulas": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Formulas behind the figures
         * @description Every formula that the basis of an answer can name. Tests evaluate each text over the ranges of its symbols and compare it with the function the answers come from.
         */
        get: operations["listFormulas"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/fuses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Fuse-links for road vehicles by family
         * @description Ratings as standardised; a rating of another series is no standard one. Never above the breaking capacity.
         */
        get: operations["listFuses"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/materials": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Boards for boxes
         * @description Thickness as sold and as measured, density, stiffness and sheet sizes of the boards a box can be cut from.
         */
        get: operations["listMaterials"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/sources": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Sources of the figures
         * @description Every source an answer can name, and how it is known. A weaker mark is never upgraded.
         */
        get: operations["listSources"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/terminals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Terminal numbers of vehicle wiring
         * @description DIN 72552: what each number on a relay, a switch or a diagram means. Makers differ; measure before you connect.
         */
        get: operations["listTerminals"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/schemas/{name}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One schema of the contract, whole
         * @description The schema of a request or an answer under its name in the contract, with every schema it leads to under `$defs`: for a form that is made from it, or a check before a call.
         */
        get: operations["describeShape"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/signal/setup": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * From the music source to a gain that is set
         * @description Level at the amplifier’s input from a line, loudspeaker or digital output, the meter reading to set the gain to, the corners of the band, how the amplifier is turned on, and the first switching-on step by step.
         */
        post: operations["setUpSignal"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/supply/cables": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Smallest cable for a feeder, with its fuse, by query
         * @description The same calculation as `chooseCable`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["chooseCableByQuery"];
        put?: never;
        /**
         * Smallest cable for a feeder, with its fuse
         * @description Fuse first, then the smallest size that passes voltage drop, ampacity at ambient and bundle, fuse rating and short-circuit withstand. Says which limit governed and which limits every other size fails; parallel runs where nothing fits.
         */
        post: operations["chooseCable"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/supply/circuit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * A whole circuit between named points, solved and judged
         * @description Batteries, alternators, cables, fuses, other conductors and amplifiers between named points, the return path included. Voltages and currents from silence to full sine, engine idling, driving and off; what fuses let through from either end of each cable, what they must break, whether a short at each amplifier opens one.
         */
        post: operations["computeCircuit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/supply/current": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Currents of the amplifiers, charging balance, engine-off time, by query
         * @description The same calculation as `computeCurrent`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["computeCurrentByQuery"];
        put?: never;
        /**
         * Currents of the amplifiers, charging balance, engine-off time
         * @description Quiescent, average, heavy and full-sine current by the partial-load law of each amplifier’s class, at nominal voltage. With the charging system, battery or capacitor described also what they make of it.
         */
        post: operations["computeCurrent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/supply/feeder": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Voltage at every amplifier of a feeder as it is
         * @description Exact steady state of one or several amplifiers behind source, trunk, fuse, block, branches and returns: regulated amplifiers as constant power, unregulated as resistance. Margin to collapse, drop-out, conductor temperatures, heat, and whether a fuse guards every cable.
         */
        post: operations["computeFeeder"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/supply/fuses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Fuse rating, family and place for a cable, by query
         * @description The same calculation as `rateFuse`, spelled in query parameters (`a.b` for a field inside a field, `a.0.b` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.
         */
        get: operations["rateFuseByQuery"];
        put?: never;
        /**
         * Fuse rating, family and place for a cable
         * @description The next standard rating above the load that the cable still carries, of a family that breaks the fault at this voltage; its place, operating times and selectivity. Refused where no rating lies between load and cable, with the size that would do.
         */
        post: operations["rateFuse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /** @description What the response of the enclosure showed. */
        AcousticFacts: {
            /** @description Below this the cone passes its limit at the target power [Hz] */
            excursionLimitHz?: number;
            /** @description Lower end of the front loudspeakers [Hz] */
            mainsLowHz?: number;
            /** @description Tuning of a port or passive radiator [Hz] */
            tuningHz?: number;
        };
        /** @description Either temperature and pressure, or density and speed of sound. Absent: dry air at 20 °C and 101 325 Pa. */
        Air: {
            /** @description Density [kg/m³] */
            densityKgPerM3?: number;
            /** @description Static pressure [Pa] */
            pressurePa?: number;
            /** @description Speed of sound [m/s] */
            soundSpeedMPerS?: number;
            /** @description Air temperature [°C] */
            temperatureC?: number;
        };
        /**
         * @description An alignment; /v1/reference/alignments describes each.
         * @enum {string}
         */
        AlignmentId: "closed-qtc" | "sbb4" | "sc4" | "be4" | "qb3" | "b4" | "c4" | "band-pass-4-flat" | "band-pass-4-ripple" | "band-pass-4-edges" | "band-pass-6-search" | "as-asked" | "in-your-space";
        /** @description The box of a family for one driver Q, solved by this service. */
        AlignmentMember: {
            /** @description Vas over net volume [1] */
            alpha: number;
            /** @description Half power over free-air resonance [1] */
            f3Ratio: number;
            /** @description Box losses as a leak; lossless when absent [1] */
            leakQ?: number;
            /** @description Total Q of the driver, the source in it [1] */
            qts: number;
            /** @description Tuning over free-air resonance [1] */
            tuningRatio: number;
        };
        /** @description An alignment. */
        AlignmentRow: {
            /** @description What its response aims at */
            aim: string;
            /** @description Id, as in a sizing */
            id: components["schemas"]["AlignmentId"];
            /** @description Kind of enclosure */
            kind: components["schemas"]["EnclosureKind"];
            /** @description Members over the Q of the driver */
            members: components["schemas"]["AlignmentMember"][];
            /** @description Name */
            name: string;
            /** @description Id of the source */
            source: components["schemas"]["SourceId"];
            /** @description For which drivers it holds */
            validity: string;
        };
        /** @description Alignments of enclosures */
        AlignmentsTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["AlignmentRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /**
         * @description Class of an output stage.
         * @enum {string}
         */
        AmplifierClass: "A" | "AB" | "B" | "D" | "G" | "H";
        /** @description One amplifier’s share. */
        AmplifierCurrents: {
            /** @description Ordinary music, 1/8 of rated output: battery and alternator [A] */
            averageA: number;
            /** @description Heat at ordinary music [W] */
            averageHeatW: number;
            /** @description Output claimed, where the fuses on board pass less [W] */
            claimedPowerW?: number;
            /** @description Class used */
            class: components["schemas"]["AmplifierClass"];
            /** @description Efficiency used [1] */
            efficiency: number;
            /** @description Test tone at rated output: fuse, cable, collapse [A] */
            fullSineA: number;
            /** @description Heat at full sine [W] */
            fullSineHeatW: number;
            /** @description Dense bass, 1/3 of rated output: battery, alternator, fuse heating [A] */
            heavyA: number;
            /** @description Input at full sine [W] */
            inputPowerW: number;
            /** @description Name from the request */
            name?: string;
            /** @description Sum of its own fuses [A] */
            onboardFuseSumA?: number;
            /** @description Ripple peak of the full sine without energy storage [A] */
            peakNoStorageA: number;
            /** @description Highest continuous output those fuses make believable [W] */
            plausiblePowerW?: number;
            /** @description Continuous RMS output used: the one claimed, or what the fuses on board pass [W] */
            powerW: number;
            /** @description At silence, switched on [A] */
            quiescentA: number;
            /** @description RMS of that ripple [A] */
            rippleRmsA: number;
            sizing: components["schemas"]["AmplifierSizing"];
            /** @description Output left at system voltage if the amplifier does not regulate [W] */
            unregulatedPowerW: number;
        };
        /** @description An older place of what the supply sees of the amplifier; give these figures beside its ratings. */
        AmplifierDraw: {
            /** @description Class of the output stage; sets efficiency and partial-load law */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Output over input at rated output, from the data sheet; beats the class [1] */
            efficiency?: number;
            /** @description Input current at rated output, from the data sheet; beats the class [A] */
            inputCurrentA?: number;
            /** @description Supply voltage of that input current; else ratedVoltageV [V] */
            inputVoltageV?: number;
            /** @description Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Draw at silence, switched on [W] */
            quiescentW?: number;
            /** @description Supply voltage of the power rating [V] */
            ratedVoltageV?: number;
            /**
             * @description Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** @description Draw when switched off [A] */
            standbyA?: number;
        };
        /** @description What all amplifiers of the best way give off together. */
        AmplifierHeat: {
            /** @description With music that averages one eighth of it [W] */
            averageW: number;
            /** @description With a test tone at full level [W] */
            fullSineW: number;
        };
        /** @description A published output of an amplifier. */
        AmplifierLoadRating: {
            /** @description Load it is rated into [Ω] */
            loadOhm: number;
            /** @description Continuous RMS output, all driven channels together [W] */
            powerW: number;
        };
        /** @description An amplifier and the drivers it shall drive. */
        AmplifierMatchRequest: {
            amplifier: components["schemas"]["AmplifierSheet"];
            /** @description How many of the amplifier may be used together */
            amplifierCount?: number;
            /** @description The cable from each output to its drivers */
            cable?: components["schemas"]["SpeakerCableRequest"];
            driver: components["schemas"]["MatchDriver"];
            /** @description Drivers */
            driverCount: number;
            /** @description Amplifiers to compare it with */
            otherAmplifiers?: components["schemas"]["AmplifierSheet"][];
            /**
             * @description `power`: closest to the drivers; `price` or `size`: least among those that fit, given for every amplifier
             * @enum {string}
             */
            rankBy?: "power" | "price" | "size";
            tone?: components["schemas"]["ToneLevel"];
        };
        /** @description How the amplifier can drive the drivers, best first. */
        AmplifierMatchResult: {
            /** @description The way to take; absent when the power of no allowed load of the amplifiers at hand is known */
            best?: components["schemas"]["MatchOption"];
            /** @description Cable of each output of the best way */
            cable?: components["schemas"]["SpeakerCable"];
            /** @description Gain setting of each output of the best way */
            gain?: components["schemas"]["MatchGain"];
            /** @description Absent when neither class nor efficiency was given */
            heat?: components["schemas"]["AmplifierHeat"];
            /** @description Every balanced way, at most 60, best first */
            options: components["schemas"]["MatchOption"][];
            /** @description How to join the drivers of each output of the best way */
            wiring?: components["schemas"]["MatchWiring"];
        };
        /** @description One published power of an amplifier. */
        AmplifierRating: {
            /** @description Rated with two channels bridged */
            bridged?: boolean;
            /** @description Load it is rated at [Ω] */
            loadOhm: number;
            /** @description Continuous RMS power of one channel, or of the bridged pair [W] */
            powerW: number;
        };
        /** @description What an amplifier's data sheet says. */
        AmplifierSheet: {
            /** @description Channels */
            channels?: number;
            /** @description Class of the output stage, for the heat */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Output over input at rated output [1] */
            efficiency?: number;
            /** @description Area it takes where it is mounted [cm²] */
            footprintCm2?: number;
            /** @description Lowest load of a bridged pair [Ω] */
            minimumBridgedOhm?: number;
            /** @description Lowest load of one channel [Ω] */
            minimumOhm: number;
            /** @description Name by which the answer speaks of it */
            name?: string;
            /** @description Fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Price, in any one currency [1] */
            price?: number;
            /** @description Idle draw [W] */
            quiescentW?: number;
            /** @description Supply at which the powers are rated, for what the fuses pass [V] */
            ratedVoltageV?: number;
            /** @description What kind of figure each rating is; only `rms` can be matched */
            ratingKind?: components["schemas"]["RatingKind"];
            /** @description Published powers, one a load */
            ratings: components["schemas"]["AmplifierRating"][];
        };
        /** @description What fuse and cable of one amplifier are sized for. */
        AmplifierSizing: {
            /** @description Test tone at rated output [A] */
            fullSineA: number;
            /** @description Dense bass, 1/3 of rated output [A] */
            heavyA: number;
            /** @description Supply at which it draws most: nominal where it regulates, charging where it does not [V] */
            voltageV: number;
        };
        /** @description What is moved into its place at once. */
        AssemblyStep: {
            /** @description Names as in the model, the second layer of a board with a 2 behind its name; layers and battens are glued to their board beforehand */
            parts: string[];
            /** @description The way it is moved */
            towards: components["schemas"]["BoxDirection"];
        };
        /** @description A default used because the request left the field out. */
        Assumed: {
            /** @description JSON pointer of the field in the request */
            pointer: string;
            /** @description The value used, in the unit of the field */
            value: number | string | boolean;
            /** @description Why this value */
            why: string;
        };
        /** @description A ring behind the cut-out that screws can bite into. */
        BaffleRing: {
            /** @description Outer diameter [mm] */
            outerDiameterMm: number;
            /** @description Thickness [mm] */
            thicknessMm: number;
        };
        /** @description A tight chamber behind the cone; one before it whose opening makes the sound. */
        BandPass4: {
            front: components["schemas"]["OpenChamber"];
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "band-pass-4";
            rear: components["schemas"]["ClosedChamber"];
        };
        /** @description Chambers behind and before the cone, each open to the outside. */
        BandPass6Parallel: {
            front: components["schemas"]["OpenChamber"];
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "band-pass-6-parallel";
            rear: components["schemas"]["OpenChamber"];
        };
        /** @description The rear chamber opens into the front one, that to the outside. */
        BandPass6Series: {
            front: components["schemas"]["OpenChamber"];
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "band-pass-6-series";
            rear: components["schemas"]["OpenChamber"];
        };
        /** @description One figure of the result, explained so that it can be worked out again. SI units throughout. */
        Basis: {
            /** @description Plain arithmetic over the input symbols: + - * / ^ sqrt() log10() pi min() max() */
            formula: string;
            /** @description Id of the formula; see /v1/reference/formulas */
            formulaId: string;
            /** @description The values the formula was fed with */
            inputs: components["schemas"]["BasisInput"][];
            /** @description JSON pointer of the figure in the result */
            quantity: string;
            /** @description Id of the source */
            source: components["schemas"]["SourceId"];
            /** @description SI unit of the value */
            unit: string;
            /** @description What the formula gives, in `unit` */
            value: number;
        };
        /** @description A symbol of a formula, its value and SI unit. */
        BasisInput: {
            /** @description Symbol as in the formula */
            symbol: string;
            /** @description Its SI unit */
            unit: string;
            /** @description Its value */
            value: number;
        };
        /** @description Every call with its own status. */
        BatchAnswer: {
            /** @description In the order of the request */
            items: components["schemas"]["BatchItem"][];
            summary: components["schemas"]["BatchSummary"];
        };
        /** @description A call with its answer. */
        BatchAnswered: {
            /** @description Body of the answer, as the operation gives it */
            answer: {
                [key: string]: unknown;
            };
            /** @description Name of the call */
            id?: string;
            /** @description Place of the call in the request, from 0 */
            index: number;
            /** @description Which calculation; says what the answer is */
            operationId: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            outcome: "answered";
            /**
             * @description HTTP status the call alone would have had
             * @enum {number}
             */
            status: 200;
        };
        /** @description One call of a batch. */
        BatchCall: {
            /** @description Name of the call; comes back beside its answer */
            id?: string;
            /**
             * @description Which calculation
             * @enum {string}
             */
            operationId: "completeDriverParameters" | "sizeEnclosure" | "computeResponse" | "computeTolerance" | "sizePort" | "layOutBox" | "checkPanelVibration" | "nestPanels" | "drawBox" | "modelBox" | "wireCoils" | "matchAmplifier" | "computeCurrent" | "chooseCable" | "rateFuse" | "computeFeeder" | "computeCircuit" | "setUpSignal" | "planSystem" | "searchDesigns";
            /** @description Body of the call, as the operation takes it */
            request: {
                [key: string]: unknown;
            };
        };
        /** @description What one call of a batch gave. */
        BatchItem: components["schemas"]["BatchAnswered"] | components["schemas"]["BatchRefused"];
        /** @description A call with its problem. */
        BatchRefused: {
            /** @description Name of the call */
            id?: string;
            /** @description Place of the call in the request, from 0 */
            index: number;
            /** @description Which calculation; says what the answer is */
            operationId: string;
            /**
             * @description There is a problem (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            outcome: "refused";
            problem: components["schemas"]["Problem"];
            /** @description HTTP status the call alone would have had */
            status: number;
        };
        /** @description Many calls in one; none depends on another. */
        BatchRequest: {
            /** @description The calls, answered in this order */
            calls: components["schemas"]["BatchCall"][];
        };
        /** @description How the calls went; the last line of a stream. */
        BatchSummary: {
            /** @description Calls with an answer */
            answered: number;
            /** @description Calls in the request */
            calls: number;
            /** @description First call that was run */
            fromIndex: number;
            /** @description Calls with a problem */
            refused: number;
        };
        /**
         * @description What a battery is made of.
         * @enum {string}
         */
        BatteryChemistry: "flooded" | "agm" | "gel" | "lithium";
        /** @description The battery that plays with the engine off. */
        BatteryRequest: {
            /** @description Capacity of the bank at the rated hours [A·h] */
            capacityAh: number;
            /** @description Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** @description Cold cranking current at −18 °C [A] */
            coldCrankingA?: number;
            /** @description What the parked car draws beside the amplifiers [A] */
            parkedLoadA?: number;
            /** @description Peukert exponent [1] */
            peukertExponent?: number;
            /** @description Hours the capacity is printed for [h] */
            ratedHours?: number;
            /** @description Reserve capacity: minutes at 25 A to 10.5 V; gives the exponent [min] */
            reserveMinutes?: number;
            /** @description Internal resistance of the bank [Ω] */
            resistanceOhm?: number;
            /** @description Share of the time to empty that may be used [1] */
            usableFraction?: number;
        };
        /** @description The battery as a source of fault current. */
        BatterySource: {
            /** @description Capacity of the bank at 20 h [A·h] */
            capacityAh?: number;
            /** @description Kind of battery; with capacityAh in place of the cold cranking current */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** @description Cold cranking current, from which both ends of the resistance follow [A] */
            coldCrankingA?: number;
            /** @description Open-circuit voltage of the battery [V] */
            openCircuitV?: number;
            /** @description Internal resistance of the battery [Ω] */
            resistanceOhm?: number;
        };
        /** @description What a row of the bill is. More may come with any version; take what you do not know as it is. */
        BillPart: string;
        /** @description One line of the bill of materials. */
        BillRow: {
            /** @description How the need was reached */
            basis: string;
            /**
             * @description Where the row belongs
             * @enum {string}
             */
            group: "board" | "joining" | "fittings" | "finish" | "wiring";
            /** @description Name of the row in this bill: its part, numbered from the second row on */
            id: string;
            /** @description Bought instead of the rows of this part, not besides */
            insteadOf?: components["schemas"]["BillPart"];
            /** @description What to buy, for people */
            item: string;
            /** @description The need itself, in `unit` [1] */
            need: number;
            /** @description False where a builder may do without */
            needed: boolean;
            /** @description What it is; the steps of the work name it so */
            part: components["schemas"]["BillPart"];
            /** @description How much to buy, in `unit`: the need with its spare, rounded up [1] */
            quantity: number;
            /** @description Spare added to the need [%] */
            sparePercent: number;
            specification?: components["schemas"]["BillSpecification"];
            /** @description Unit of quantity and need */
            unit: string;
        };
        /** @description What a shop looks for; only what says something of the row. */
        BillSpecification: {
            /** @description Conductor section [mm²] */
            areaMm2?: number;
            /** @description Capacitance [F] */
            capacitanceF?: number;
            /** @description Lashing capacity [N] */
            capacityN?: number;
            /** @description Size of a conductor with its series, as `4 AWG` */
            designation?: string;
            /** @description Diameter; of a tube inside [mm] */
            diameterMm?: number;
            /** @description Form of the fuse */
            fuseType?: string;
            /** @description Length of one piece [mm] */
            lengthMm?: number;
            /** @description Material of a board */
            material?: string;
            /** @description Rated current [A] */
            ratedA?: number;
            /** @description Resistance [Ω] */
            resistanceOhm?: number;
            /** @description Thickness [mm] */
            thicknessMm?: number;
            /** @description Metric thread */
            thread?: string;
            /** @description Width of one piece [mm] */
            widthMm?: number;
        };
        /** @description The board a box is made of; what is left out comes from the table. */
        Board: {
            /** @description Modulus in bending across the face grain [GPa] */
            acrossModulusGpa?: number;
            /** @description Density [kg/m³] */
            densityKgPerM3?: number;
            /** @description Modulus in bending, along the face grain [GPa] */
            elasticModulusGpa?: number;
            /** @description Board */
            material?: components["schemas"]["BoardId"];
            /** @description Poisson ratio, strain along to stress across [1] */
            poisson?: number;
            /** @description Shear modulus in the plane of the board [GPa] */
            shearModulusGpa?: number;
        };
        /**
         * @description A board; /v1/reference/materials describes each.
         * @enum {string}
         */
        BoardId: "mdf" | "birch-plywood" | "poplar-plywood" | "particleboard";
        /** @description One sheet size. */
        BoardSheet: {
            /** @description Along the grain [mm] */
            lengthMm: number;
            /** @description Across the grain [mm] */
            widthMm: number;
        };
        /** @description All sheets of one board, and how good the plan is. */
        BoardSummary: {
            /** @description Sheets used above the least number [%] */
            aboveLeastPercent: number;
            /** @description The bound by area alone, before it is rounded up to whole sheets [1] */
            areaBoundSheets: number;
            /** @description No plan can use fewer sheets */
            leastSheetCount: number;
            /** @description Material */
            material?: string;
            /** @description Area of the panels [m²] */
            panelAreaM2: number;
            /** @description Panels */
            panelCount: number;
            /**
             * @description What proves the least number
             * @enum {string}
             */
            provedBy: "area" | "large-pieces" | "densest-sheet";
            /** @description Area of the sheets used [m²] */
            sheetAreaM2: number;
            /** @description Sheets used */
            sheetCount: number;
            /** @description Thickness [mm] */
            thicknessMm: number;
            /** @description What stands between the plan and the bound */
            why: string;
        };
        /** @description One thickness of a board. */
        BoardThickness: {
            /** @description Modulus in bending across the face grain [MPa] */
            acrossMpa: number;
            /** @description Modulus in bending along the face grain [MPa] */
            alongMpa: number;
            /** @description Density [kg/m³] */
            densityKgPerM3: number;
            /** @description Thickness as sold [mm] */
            nominalMm: number;
            /** @description Mean thickness of a real sheet [mm] */
            realMm: number;
        };
        /** @description What the box has to pass to get in. */
        BootOpening: {
            /** @description Clear height [mm] */
            heightMm: number;
            /** @description Clear width [mm] */
            widthMm: number;
        };
        /** @description The order in which the box goes together: taken apart along straight ways, and that turned round. */
        BoxAssembly: {
            /** @description From the first board to the last driver */
            steps: components["schemas"]["AssemblyStep"][];
            /** @description What no straight way leads to, whatever is put on before; empty for a box that goes together */
            stuck: string[];
        };
        /** @description A unit vector in the axes of the box. */
        BoxDirection: {
            /** @description Share to the right [1] */
            x: number;
            /** @description Share to the rear [1] */
            y: number;
            /** @description Share upwards [1] */
            z: number;
        };
        /** @description One drawing. */
        BoxDrawing: {
            /** @description Height on paper [mm] */
            heightMm: number;
            /** @description Name of the panel or sheet */
            name: string;
            /** @description The drawing is 1 to this when printed at its size [1] */
            scale: number;
            /**
             * @description A panel, a sheet with what is cut from it, a step of assembly, or a page of a template
             * @enum {string}
             */
            subject: "panel" | "cut-sheet" | "assembly-step" | "template";
            /** @description The drawing as SVG text */
            svg: string;
            /** @description Width on paper [mm] */
            widthMm: number;
        };
        /** @description A box to be drawn. */
        BoxDrawingRequest: {
            box: components["schemas"]["BoxRequest"];
            /** @description How inches are written on paper */
            inches?: components["schemas"]["InchStyle"];
            /** @description Width of the saw cut [mm] */
            kerfMm?: number;
            /** @description Sheets to cut from; the usual sheet of the board when absent */
            sheets?: components["schemas"]["SheetStock"][];
            /**
             * @description What to draw: `both` is panels and cut sheets, when absent; `assembly` is a picture for each step; `templates` are round holes as large as life, for A4 and Letter
             * @enum {string}
             */
            show?: "panels" | "cut-sheets" | "both" | "assembly" | "templates";
            /** @description Title of the set of drawings */
            title?: string;
            /** @description Cut off every edge of a raw sheet first, kerf included [mm] */
            trimMm?: number;
            /** @description Units on paper; figures of the JSON answer are metric always */
            units?: components["schemas"]["PaperUnits"];
        };
        /** @description A box with its drawings. */
        BoxDrawings: {
            box: components["schemas"]["BoxLayoutResult"];
            cutPlan?: components["schemas"]["SheetPlanResult"];
            /** @description Panels first, then cut sheets; or the steps of assembly in order; or templates, hole by hole */
            drawings: components["schemas"]["BoxDrawing"][];
            /** @description How inches are written */
            inches: components["schemas"]["InchStyle"];
            /** @description Title of the set */
            title: string;
            /** @description Units on paper */
            units: components["schemas"]["PaperUnits"];
        };
        /** @description Equal drivers to be set into the box; one when `count` is absent. */
        BoxDriver: {
            /** @description Centre of each driver; arranged evenly when absent */
            centres?: components["schemas"]["PlaceOnPanel"][];
            /** @description Drivers of this kind */
            count?: number;
            /** @description Hole [mm] */
            cutOutDiameterMm?: number;
            /** @description Air one driver takes from the box; negative adds air [L] */
            displacementL?: number;
            /** @description Face that carries the driver; the front when absent */
            face?: components["schemas"]["FaceName"];
            /** @description Outer diameter [mm] */
            flangeDiameterMm?: number;
            /** @description Name on the drawing */
            label?: string;
            /** @description Diameter of the motor [mm] */
            magnetDiameterMm?: number;
            /** @description Height of the motor [mm] */
            magnetHeightMm?: number;
            /** @description Mass of one driver [kg] */
            massKg?: number;
            /**
             * @description `reversed` puts the magnet outside
             * @enum {string}
             */
            mount?: "front" | "reversed";
            /** @description Outer face of the baffle to the rear of the motor [mm] */
            mountingDepthMm?: number;
            /** @description Rebate that lets the flange in [mm] */
            rebateDepthMm?: number;
            ring?: components["schemas"]["BaffleRing"];
            /** @description Circle of the fixing screws [mm] */
            screwCircleDiameterMm?: number;
            /** @description Fixing screws */
            screwCount?: number;
            /** @description Cone area [cm²] */
            sdCm2?: number;
            /** @description Hole through the pole piece [mm] */
            ventDiameterMm?: number;
            /** @description Diameter of the voice coil [mm] */
            voiceCoilDiameterMm?: number;
            /** @description Excursion one way [mm] */
            xmaxMm?: number;
        };
        /** @description The drivers as the alignments see them. */
        BoxedDrivers: {
            /** @description Drivers */
            count: number;
            /** @description Efficiency bandwidth product fs/Qes [Hz] */
            ebpHz: number;
            /** @description Free-air resonance [Hz] */
            fsHz: number;
            /** @description Total Q of one driver [1] */
            qts: number;
            /** @description The same with the resistance of source and cable, which the alignments go by [1] */
            qtsWithSource: number;
            /** @description Vas of all drivers [L] */
            vasL: number;
        };
        /** @description The box in its place. */
        BoxFit: {
            /** @description Whether there is a place clear of every block */
            clearOfKeepOuts?: boolean;
            opening?: components["schemas"]["BoxThroughOpening"];
            place?: components["schemas"]["BoxPlace"];
            /** @description Every limit given */
            spare: components["schemas"]["BoxSpare"][];
        };
        /** @description Things in the box beside drivers and ports. */
        BoxFittings: {
            amplifier?: components["schemas"]["InsideAmplifier"];
            cleats?: components["schemas"]["Cleats"];
            lining?: components["schemas"]["Lining"];
            terminal?: components["schemas"]["TerminalCup"];
        };
        /** @description The smallest block round the air inside. */
        BoxInnerSize: {
            /** @description Depth [mm] */
            depthMm: number;
            /** @description Height [mm] */
            heightMm: number;
            /** @description Width [mm] */
            widthMm: number;
        };
        /**
         * @description Kind of box a plan can be made for.
         * @enum {string}
         */
        BoxKind: "closed" | "vented";
        /** @description The box, ready to be sawn. */
        BoxLayoutResult: {
            assembly: components["schemas"]["BoxAssembly"];
            /** @description Blanks of all parts, cut-outs not taken off [m²] */
            boardAreaM2: number;
            /** @description Boards alone, cut-outs taken off [kg] */
            boardMassKg: number;
            /** @description Of boards and drivers */
            centreOfGravity: components["schemas"]["BoxPoint"];
            /** @description Chambers of a band-pass box */
            chambers?: components["schemas"]["Chamber"][];
            /** @description Distances that were checked */
            clearances: components["schemas"]["Clearance"][];
            fit?: components["schemas"]["BoxFit"];
            inner: components["schemas"]["BoxInnerSize"];
            /** @description Boards, and drivers and amplifier of given mass [kg] */
            massKg: number;
            outer: components["schemas"]["BoxOuterSize"];
            /** @description Parts; equal ones in one row */
            panels: components["schemas"]["Panel"][];
            port?: components["schemas"]["PortLayout"];
            /** @description Shape */
            shape: components["schemas"]["BoxShape"];
            /** @description The first along each inside size */
            standingWaves: components["schemas"]["BoxStandingWave"][];
            vibration: components["schemas"]["BoxVibration"];
            volume: components["schemas"]["VolumeBalance"];
        };
        /** @description The space the box may take. */
        BoxLimits: {
            /** @description Play on every side [mm] */
            clearanceMm?: number;
            /** @description Carpet on every face [mm] */
            coveringMm?: number;
            /** @description Deepest, at the floor [mm] */
            depthMm?: number;
            /** @description Highest [mm] */
            heightMm?: number;
            /** @description Wheel arches and other blocks in the way */
            keepOuts?: components["schemas"]["KeepOut"][];
            opening?: components["schemas"]["BootOpening"];
            /** @description Lean of the seat back from the vertical, into the boot [°] */
            seatSlopeDeg?: number;
            /** @description Widest [mm] */
            widthMm?: number;
        };
        /** @description A box as what it is put together from. */
        BoxModel: {
            /** @description Boards first, one by one, then what is set into them */
            bodies: components["schemas"]["ModelBody"][];
        };
        /** @description Outer size of the box. */
        BoxOuterSize: {
            /** @description Depth, of a wedge at its floor [mm] */
            depthMm: number;
            /** @description Height [mm] */
            heightMm: number;
            /** @description Lean of the sloped face of a wedge from the vertical [°] */
            slopeDeg?: number;
            /** @description Depth of a wedge at its lid [mm] */
            topDepthMm?: number;
            /** @description Width [mm] */
            widthMm: number;
        };
        /** @description Outer sizes that are fixed; the others are solved for `netVolumeL`. */
        BoxOuterWish: {
            /** @description Depth, of a wedge at its floor [mm] */
            depthMm?: number;
            /** @description Height [mm] */
            heightMm?: number;
            /** @description Depth of a wedge at its lid [mm] */
            topDepthMm?: number;
            /** @description Width [mm] */
            widthMm?: number;
        };
        /** @description JSON Merge Patch (RFC 7396) onto the request of the plan. */
        BoxPatch: {
            enclosure: {
                /** @description Highest peak air speed in the port; 17, 25 and 34 are tried in turn when absent [m/s] */
                airSpeedMPerS?: number;
                /** @description Takes the wish out: the box is given */
                goal: null;
                /** @description `closed` is tighter and smaller, `vented` louder and reaches lower */
                kind?: components["schemas"]["BoxKind"];
                /** @description Net volume wanted [L] */
                netVolumeL?: number;
                /** @description Clear area wanted of the port; it follows from the air speed when absent [cm²] */
                portAreaCm2?: number;
                /** @description Shape of the port */
                portShape?: components["schemas"]["PortShape"];
                /** @description Tuning wanted of a vented box [Hz] */
                tuningHz?: number;
            };
            signal?: {
                /** @description Power the gain is set for, where the box holds less than the parts bear [W] */
                gainPowerW: number;
            };
        };
        /** @description Where the box stands on the floor of the boot. */
        BoxPlace: {
            /** @description From the left [mm] */
            xMm: number;
            /** @description From the seat or the sill [mm] */
            yMm: number;
        };
        /** @description A point in the box: x from left to right and z upwards seen from the front, y from front to rear, from the outer bottom front left corner. */
        BoxPoint: {
            /** @description From the left [mm] */
            xMm: number;
            /** @description From the front [mm] */
            yMm: number;
            /** @description From the floor [mm] */
            zMm: number;
        };
        /** @description A port as it is to be built. */
        BoxPort: components["schemas"]["RoundPort"] | components["schemas"]["SlotPort"];
        /** @description A box by its outer sizes, or by the net volume it shall hold. */
        BoxRequest: {
            air?: components["schemas"]["Air"];
            board?: components["schemas"]["Board"];
            bracing?: components["schemas"]["BracingWish"];
            displacement?: components["schemas"]["GivenDisplacement"];
            divider?: components["schemas"]["Divider"];
            /** @description Drivers */
            drivers?: components["schemas"]["BoxDriver"][];
            fittings?: components["schemas"]["BoxFittings"];
            /** @description Boards of the front */
            frontLayers?: number;
            joints?: components["schemas"]["Joints"];
            limits?: components["schemas"]["BoxLimits"];
            /** @description Air wanted inside, everything taken off [L] */
            netVolumeL?: number;
            outer?: components["schemas"]["BoxOuterWish"];
            port?: components["schemas"]["BoxPort"];
            prism?: components["schemas"]["Prism"];
            /** @description Front set back behind the edges round it [mm] */
            recessMm?: number;
            /** @description Step the saw is set by [mm] */
            sawStepMm?: number;
            /** @description Shape; rectangular when absent */
            shape?: components["schemas"]["BoxShape"];
            /** @description Lean of that face from the vertical [°] */
            slopeDeg?: number;
            /**
             * @description Of a wedge
             * @enum {string}
             */
            slopedFace?: "front" | "back";
            /** @description Which way the box grows: in balanced proportions, or low, shallow or narrow first */
            strategy?: components["schemas"]["BoxStrategy"];
            /** @description Board of all panels, as measured [mm] */
            thicknessMm: number;
        };
        /**
         * @description Shape of a box.
         * @enum {string}
         */
        BoxShape: "rectangular" | "wedge" | "prism";
        /** @description One outer size against its limit. */
        BoxSpare: {
            /**
             * @description Which size
             * @enum {string}
             */
            axis: "width" | "height" | "depth";
            /** @description Limit, less what a leaning seat takes at the lid [mm] */
            limitMm: number;
            /** @description Box with covering and play [mm] */
            sizeMm: number;
            /** @description What is left; negative when it does not fit [mm] */
            spareMm: number;
        };
        /** @description Lowest standing wave along one inside size. */
        BoxStandingWave: {
            /**
             * @description Which size
             * @enum {string}
             */
            along: "width" | "height" | "depth";
            /** @description c/(2L) [Hz] */
            frequencyHz: number;
            /** @description Inside [mm] */
            insideMm: number;
        };
        /**
         * @description Which way a box grows where there is a choice.
         * @enum {string}
         */
        BoxStrategy: "balanced" | "lowest" | "shallowest" | "narrowest";
        /** @description Pushed straight through, or tilted in the plane of the opening. */
        BoxThroughOpening: {
            /**
             * @description Which goes through
             * @enum {string}
             */
            face: "front" | "side" | "lid" | "none";
            /** @description Whether a face passes */
            passes: boolean;
            /** @description Whether it has to be tilted */
            tilted: boolean;
        };
        /** @description How stiff the box is. */
        BoxVibration: {
            /** @description Every face */
            faces: components["schemas"]["FaceVibration"][];
            /** @description What all faces move over what the cones move [%] */
            movedSharePercent?: number;
            /** @description Peak pressure: given, or that of a closed box at full excursion of its drivers [Pa] */
            pressurePa?: number;
            /** @description 1.5 times the top of the band [Hz] */
            wantedHz: number;
        };
        /** @description Present, even empty: braces are placed until every panel passes. */
        BracingWish: {
            /** @description Peak pressure inside, e.g. from the response; that of a closed box at full excursion when absent [Pa] */
            pressurePa?: number;
            /** @description Top of the band the box plays; 120 Hz when absent [Hz] */
            upperHz?: number;
        };
        /** @description Main fuse over a branch fuse. */
        BranchSelectivity: {
            /** @description Branch fuse [A] */
            branchRatingA: number;
            /** @description Main over branch [1] */
            ratio: number;
            /** @description A fault behind the branch leaves the main fuse whole */
            selective: boolean;
            /** @description Index of the amplifier */
            stretch: string;
        };
        /** @description The order of work. */
        BuildOrder: {
            /** @description The car has no battery from this day until it is switched on */
            batteryOffDay: number;
            /** @description A first build over days: what can go on while something dries goes on; days of mere waiting are left out */
            days: components["schemas"]["WorkDay"][];
            /** @description From first to last step with one pair of hands, with waiting [min] */
            elapsedMinutes: number;
            /** @description Days a practised hand needs for it */
            practisedDays: number;
            /** @description The same of a practised hand [min] */
            practisedMinutes: number;
            /** @description Steps in order */
            steps: components["schemas"]["BuildStep"][];
            /** @description Work of a careful first build, without waiting [min] */
            workMinutes: number;
        };
        /** @description One step of the work. */
        BuildStep: {
            /** @description What to do */
            actions: string[];
            /** @description Cautions whose place is this step */
            cautions: components["schemas"]["CautionCode"][];
            /** @description What to check before going on */
            checks: string[];
            /** @description Waiting before a step that needs this one [min] */
            cureMinutes: number;
            /** @description Name of the step, for `needs` */
            id: string;
            /** @description What exists when the step is done */
            makes: ("sheet" | "panel" | "wood-screw" | "layer-screw" | "glue" | "sealant" | "driver-screw" | "t-nut" | "gasket" | "port-tube" | "terminal-cup" | "cup-screw" | "foot" | "strap" | "anchor-bolt" | "port-paint" | "lining" | "lining-adhesive" | "carpet" | "carpet-adhesive" | "edge-sealer" | "filler" | "abrasive" | "inside-wire" | "receptacle" | "speaker-wire" | "turn-on-wire" | "signal-lead" | "splice" | "signal-ferrule" | "line-converter" | "power-cable" | "return-cable" | "fuse" | "fuse-holder" | "ring-lug" | "power-ferrule" | "sleeve" | "grommet" | "clip" | "distribution-block" | "capacitor" | "charging-resistor" | "second-battery" | "battery-tray" | "second-battery-link" | "turn-on-relay" | "turn-on-fuse" | "amplifier-bolt" | "ground-bolt" | "metal-guard" | "sheath" | "cable-label" | "cut-panel" | "brace" | "port-walls" | "shell" | "closed-box" | "finished-box" | "driver" | "amplifier")[];
            /** @description Work of a careful first build [min] */
            minutes: number;
            /** @description Ids of the steps that must be finished, and cured, before */
            needs: string[];
            /** @description Place in the order, from 1 */
            number: number;
            /**
             * @description `table`: with paper and telephone; `bench`; `car`
             * @enum {string}
             */
            place: "table" | "bench" | "car";
            /** @description What does instead, where a tool is missing */
            substitutes: string[];
            /** @description The step in a few words */
            title: string;
            /** @description Tools */
            tools: string[];
            /** @description Parts and materials: rows of the bill, what an earlier step made, or what was chosen before */
            uses: ("sheet" | "panel" | "wood-screw" | "layer-screw" | "glue" | "sealant" | "driver-screw" | "t-nut" | "gasket" | "port-tube" | "terminal-cup" | "cup-screw" | "foot" | "strap" | "anchor-bolt" | "port-paint" | "lining" | "lining-adhesive" | "carpet" | "carpet-adhesive" | "edge-sealer" | "filler" | "abrasive" | "inside-wire" | "receptacle" | "speaker-wire" | "turn-on-wire" | "signal-lead" | "splice" | "signal-ferrule" | "line-converter" | "power-cable" | "return-cable" | "fuse" | "fuse-holder" | "ring-lug" | "power-ferrule" | "sleeve" | "grommet" | "clip" | "distribution-block" | "capacitor" | "charging-resistor" | "second-battery" | "battery-tray" | "second-battery-link" | "turn-on-relay" | "turn-on-fuse" | "amplifier-bolt" | "ground-bolt" | "metal-guard" | "sheath" | "cable-label" | "cut-panel" | "brace" | "port-walls" | "shell" | "closed-box" | "finished-box" | "driver" | "amplifier")[];
            /** @description Dangers of this step */
            warnings: string[];
        };
        /** @description A row of the bill that is needed. */
        BuyLine: {
            /** @description Name of the row in the bill */
            id: string;
            /** @description What to buy */
            item: string;
            /** @description How much to buy, in `unit` [1] */
            quantity: number;
            /** @description Unit of the quantity */
            unit: string;
        };
        /** @description The car around the seat: volume or length for the pressure-vessel model, or a measured curve, which takes its place. */
        Cabin: {
            /** @description Q of the corner below which the level rises [1] */
            cornerQ?: number;
            /** @description Corner below which leaks stop the rise [Hz] */
            leakCornerHz?: number;
            /** @description Q of that corner [1] */
            leakQ?: number;
            /** @description Longest inner dimension of the cabin [m] */
            lengthM?: number;
            measured?: components["schemas"]["MeasuredTransfer"];
            /** @description Air volume of the cabin, boot included if open to it [L] */
            volumeL?: number;
        };
        /** @description How the level at the seat was reached. */
        CabinModel: {
            /** @description Below it the cabin acts as a pressure vessel [Hz] */
            cornerHz?: number;
            /** @description Corner below which leaks stop the rise [Hz] */
            leakCornerHz?: number;
            /** @description Lowest standing wave of the cabin; the model leaves it out [Hz] */
            lowestModeHz?: number;
            /**
             * @description `pressure-vessel`: modelled. `measured`: the curve given
             * @enum {string}
             */
            model: "pressure-vessel" | "measured";
            /** @description Real cars lie within ± this of the curve; 0 for a measured one [dB] */
            uncertaintyDb: number;
        };
        /** @description Allowable current of one insulation class, single conductor at 30 °C. */
        CableAmpacity: {
            /** @description Allowable current [A] */
            ampacityA: number;
            /** @description Insulation class [°C] */
            insulationC: number;
        };
        /** @description One size and the limits it fails. */
        CableCandidate: {
            /** @description Current it may carry for good here; absent outside the table [A] */
            ampacityA?: number;
            /** @description Conducting section [mm²] */
            areaMm2: number;
            /** @description Current; absent where the load collapses [A] */
            currentA?: number;
            /** @description Size with its series */
            designation: string;
            /** @description Diameter of the solid conductor of this section [mm] */
            diameterMm: number;
            /** @description The same of nominal voltage [%] */
            dropPercent?: number;
            /** @description Drop on conductors and contacts [V] */
            dropV?: number;
            /** @description Source less this drop [V] */
            endVoltageV?: number;
            /** @description Every limit it fails; none means it fits */
            fails: components["schemas"]["CableLimit"][];
            /** @description Short-circuit current at the far end [A] */
            faultA?: number;
            /** @description Largest fuse by the policy [A] */
            highestFuseA?: number;
            /** @description Conductors out and back, and contactOhm [Ω] */
            loopOhm: number;
            /** @description Heat in conductors and contacts [W] */
            lossW?: number;
            /** @description Resistance at the temperature of the drop [Ω/m] */
            ohmPerM: number;
        };
        /**
         * @description What decides the size of a cable.
         * @enum {string}
         */
        CableLimit: "drop" | "ampacity" | "fuse" | "short-circuit" | "terminal";
        /** @description The load the cable was chosen for. */
        CableLoad: {
            /** @description Current of fuse and ampacity [A] */
            currentA: number;
            /** @description Power drawn [W] */
            powerW: number;
        };
        /** @description A feeder that wants a cable and a fuse. Lengths are conductor lengths. */
        CableRequest: {
            /** @description Hottest surroundings along the run [°C] */
            ambientC?: number;
            /** @description Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** @description Limits to hold the sizes to; all when left out */
            checks?: components["schemas"]["CableLimit"][];
            /** @description Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
            conductor?: components["schemas"]["Conductor"];
            /** @description Conductor temperature the drop is judged at [°C] */
            conductorTemperatureC?: number;
            /** @description Contact resistance that counts into the drop, once in the loop [Ω] */
            contactOhm?: number;
            /** @description Test tones or sustained notes: the fuse is held to the full sine for good */
            continuousTone?: boolean;
            /** @description Current at full sine; or loadPowerW [A] */
            currentA?: number;
            /** @description Largest drop on the conductors, of nominal voltage [%] */
            dropLimitPercent?: number;
            /** @description The same in volts [V] */
            dropLimitV?: number;
            /** @description Voltage at which the amplifier’s converter stops [V] */
            dropOutV?: number;
            /** @description Fuse that is already there [A] */
            fuseA?: number;
            /** @description Surroundings of the fuse [°C] */
            fuseAmbientC?: number;
            /** @description Fuse families allowed */
            fuseTypes?: components["schemas"]["FuseType"][];
            /** @description Power the next amplifier will draw: what to lay now [W] */
            futureLoadPowerW?: number;
            /** @description Series of the size; AWG, SAE and mm² are different sizes */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** @description Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
            heavyCurrentA?: number;
            /** @description Temperature class printed on the insulation [°C] */
            insulationC?: number;
            /** @description What the insulation is made of; sets what it survives in a short circuit, which its class does not: PVC 160 °C, XLPE (cross-linked polyethylene) and EPR 250 °C, rubber 200 to 220 °C, silicone 350 °C */
            insulationMaterial?: components["schemas"]["InsulationMaterial"];
            /** @description One lug; four of them lie in the loop beside the drop [Ω] */
            jointOhm?: number;
            /**
             * @description `constant-current`: the current at nominal voltage; `constant-power`: exact, the current rises as the voltage falls
             * @enum {string}
             */
            loadModel?: "constant-current" | "constant-power";
            /** @description Power drawn at full sine (not put out); or currentA [W] */
            loadPowerW?: number;
            /** @description Continuous load over fuse rating [1] */
            loadRatio?: number;
            /** @description External fuse the amplifier’s maker states [A] */
            makerFuseA?: number;
            /** @description Where a metric copper size takes its resistance from */
            metricResistance?: components["schemas"]["MetricResistance"];
            /** @description Fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
            policy?: components["schemas"]["FusePolicy"];
            /** @description Conductor length of the positive run [m] */
            positiveLengthM: number;
            /** @description Supply voltage that the amplifier at the end is rated at; it must suit the system [V] */
            ratedVoltageV?: number;
            /** @description Resistivity at 20 °C in place of the metal’s; metric sizes then use their nominal area [Ω·m] */
            resistivityOhmM?: number;
            return: components["schemas"]["ReturnPath"];
            shortCircuit?: components["schemas"]["ShortCircuitRequest"];
            /** @description Sizes to choose from */
            sizes?: string[];
            source?: components["schemas"]["BatterySource"];
            /** @description Voltage at the start of the run, when not the nominal one [V] */
            sourceVoltageV?: number;
            /** @description Spaces the run passes; the hottest gives the ambient when ambientC is left out */
            spaces?: components["schemas"]["RunSpace"][];
            /** @description Resistance of the stranded over the solid conductor [1] */
            strandingFactor?: number;
            /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
            systemVoltageV: number;
            /** @description Temperature coefficient at 20 °C in place of the metal’s [1/K] */
            temperatureCoefficientPerK?: number;
            /** @description Largest conductor the amplifier’s terminal takes [mm²] */
            terminalAreaMm2?: number;
        };
        /** @description Cable, fuse, and every candidate with the limits it fails. */
        CableResult: {
            /** @description Left at the amplifier with fuse, joints and return; absent after collapse [V] */
            amplifierVoltageV?: number;
            /** @description Absent when no size fits */
            cable?: components["schemas"]["ChosenCable"];
            /** @description Every size, ascending */
            candidates: components["schemas"]["CableCandidate"][];
            /** @description Power at which the supply collapses over the power drawn [1] */
            collapseMargin?: number;
            /** @description Absent when no family reaches the current */
            fuse?: components["schemas"]["ChosenFuse"];
            ground: components["schemas"]["GroundAdvice"];
            load: components["schemas"]["CableLoad"];
            /** @description Least section that keeps the drop [mm²] */
            minimumAreaMm2?: number;
            parallel?: components["schemas"]["ParallelRuns"];
            shortCircuit?: components["schemas"]["ShortCircuitAnswer"];
            upsized?: components["schemas"]["UpsizedCable"];
        };
        /** @description One cable size of one series. */
        CableRow: {
            /** @description By insulation class; empty outside the table */
            ampacities: components["schemas"]["CableAmpacity"][];
            /** @description Conducting section; of a metric size the nominal one [mm²] */
            areaMm2: number;
            /** @description Designation with its series */
            designation: string;
            /** @description Series; AWG, SAE and mm² are different sizes */
            gaugeSystem: components["schemas"]["GaugeSystem"];
            /** @description Copper at 20 °C, strands included [Ω/m] */
            ohmPerM: number;
        };
        /** @description Cable sizes with section, resistance and allowable current */
        CablesTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["CableRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What an answer is cited by; on paper too. */
        Calculation: {
            /** @description The first 27 letters of SHA-256 in base64url over `[version, operationId, request]` as canonical JSON (RFC 8785): the same question of the same version has the same digest, and the same answer */
            digest: string;
            /** @description Version of the service; /v1/changes says which figures each version moved */
            version: string;
        };
        /** @description What the acoustic network gives for the candidate: coil inductance, source resistance and all stated losses in it. */
        CandidateResponse: {
            /** @description Half power; of a band-pass re its peak, else re the plateau [Hz] */
            f3Hz?: number;
            /** @description Upper half-power frequency of a band-pass [Hz] */
            f3UpperHz?: number;
            /** @description A tenth of the power [Hz] */
            f10Hz?: number;
            /** @description Group delay at f3 [ms] */
            groupDelayAtF3Ms?: number;
            /** @description Levels at standard bass frequencies */
            levels: components["schemas"]["ComparedLevel"][];
            /** @description Highest level re the plateau [dB] */
            peakDb: number;
            /** @description Highest less lowest turning point above half power [dB] */
            rippleDb: number;
        };
        /** @description What the capacitor does. */
        CapacitorEffect: {
            /** @description Ripple above this frequency is smoothed [Hz] */
            cornerHz?: number;
            /** @description Step over its own resistance at full sine [V] */
            esrStepV?: number;
            /** @description Time it alone carries the full sine [ms] */
            holdUpMs: number;
            /** @description Time to 99 % [s] */
            precharge99S?: number;
            /** @description Time until less than 1 V is left across the resistor [s] */
            prechargeDoneS?: number;
            /** @description Resistor for the first charge and for the discharge [Ω] */
            prechargeOhm?: number;
            /** @description Power in the resistor at the start [W] */
            prechargePeakW?: number;
            /** @description Time constant of the first charge [s] */
            prechargeTimeConstantS?: number;
            /** @description Energy stored [J] */
            storedJ: number;
            /** @description Energy between the two voltages [J] */
            usableJ: number;
        };
        /** @description A stiffening capacitor at the amplifiers. */
        CapacitorRequest: {
            /** @description Capacitance [F] */
            capacitanceF: number;
            /** @description Series resistance of the capacitor [Ω] */
            esrOhm?: number;
            /** @description Voltage it is charged to [V] */
            fromV?: number;
            /** @description Resistor it is charged through at first [Ω] */
            prechargeOhm?: number;
            /** @description Resistance between source and capacitor [Ω] */
            sourceOhm?: number;
            /** @description Voltage it may fall to [V] */
            toV?: number;
        };
        /** @description A doubt or danger, said beside the result. */
        Caution: {
            /** @description JSON pointer into the request */
            at?: string;
            /** @description Code of the caution; /v1/cautions documents each */
            code: components["schemas"]["CautionCode"];
            /** @description The figures that triggered it; each name ends in its unit */
            figures?: {
                [key: string]: number;
            };
            /** @description `note`: know this. `care`: change or watch it. `stop`: do not build or switch this on. */
            level: components["schemas"]["CautionLevel"];
            /** @description What is the matter, with its figures */
            message: string;
        };
        /** @description Every kind of caution. */
        CautionCatalogue: {
            /** @description By code */
            cautions: components["schemas"]["CautionKind"][];
        };
        /** @description Code of a caution; /v1/cautions documents each. More may come with any version; take what you do not know as it is. */
        CautionCode: string;
        /** @description One kind of caution. */
        CautionKind: {
            /** @description Where its threshold comes from */
            basis: string;
            /** @description The same in a dozen words at most, as it stands at a step; absent where it is said whole */
            brief?: string;
            /** @description Stable code, as in the caution */
            code: string;
            /** @description `note`: know this. `care`: change or watch it. `stop`: do not build or switch this on. */
            level: string;
            /** @description What it means and what to do */
            meaning: string;
        };
        /**
         * @description `note`: know this. `care`: change or watch it. `stop`: do not build or switch this on.
         * @enum {string}
         */
        CautionLevel: "note" | "care" | "stop";
        /** @description A caution in short: a `stop` whole, what is peculiar to the design with its figures, others in a dozen words. */
        CautionLine: {
            /** @description Code of the caution; /v1/cautions documents each */
            code: components["schemas"]["CautionCode"];
            /** @description `note`: know this. `care`: change or watch it. `stop`: do not build or switch this on. */
            level: components["schemas"]["CautionLevel"];
            /** @description What is the matter, with its figures */
            message: string;
        };
        /** @description One chamber of a box with an inner divider. */
        Chamber: {
            /** @description Taken by what stands in it [L] */
            displacedL: number;
            /** @description Empty [L] */
            grossL: number;
            /** @description Which */
            name: components["schemas"]["ChamberName"];
            /** @description Air that acts as the spring [L] */
            netL: number;
        };
        /**
         * @description A chamber of an enclosure.
         * @enum {string}
         */
        ChamberName: "rear" | "front";
        /** @description Which figures each version moved. */
        Changes: {
            /** @description The newest first */
            versions: components["schemas"]["VersionChanges"][];
        };
        /** @description Charging balance; a negative surplus comes out of the battery. */
        ChargingBalance: {
            /** @description What the vehicle draws [A] */
            baseLoadA: number;
            /** @description Output when driving, hot [A] */
            cruiseAvailableA: number;
            /** @description Surplus when driving, ordinary music [A] */
            cruiseAverageSurplusA: number;
            /** @description Surplus when driving, dense bass [A] */
            cruiseHeavySurplusA: number;
            /** @description Output at idle, hot [A] */
            idleAvailableA: number;
            /** @description Surplus at idle, ordinary music [A] */
            idleAverageSurplusA: number;
            /** @description Surplus at idle, dense bass [A] */
            idleHeavySurplusA: number;
        };
        /** @description What charges the vehicle while it runs. */
        ChargingRequest: {
            /** @description What the vehicle itself draws while it runs [A] */
            baseLoadA?: number;
            /** @description Output of an alternator hot over cold [1] */
            hotFactor?: number;
            /** @description Output of an alternator at idle from the rating line, cold; or idleFraction [A] */
            idleA?: number;
            /** @description Output of an alternator at idle over rated output; or idleA [1] */
            idleFraction?: number;
            /**
             * @description Alternator, or a DC-DC converter: from 24 V of a truck, 48 V or the traction battery
             * @enum {string}
             */
            kind: "alternator" | "converter";
            /** @description Rated output current at system voltage [A] */
            ratedA: number;
        };
        /**
         * @description What the body of the vehicle is made of.
         * @enum {string}
         */
        ChassisBody: "steel" | "aluminium" | "composite" | "unknown";
        /** @description Result with its cautions, assumed defaults and sources. */
        CheckPanelVibrationAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["PanelVibrationResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        ChooseCableAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["CableResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/supply/cables gives. */
        ChooseCableDone: {
            answer: components["schemas"]["ChooseCableAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["CableRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/supply/cables gives, or why not. */
        ChooseCablePart: components["schemas"]["ChooseCableDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description The smallest size that passes every limit. */
        ChosenCable: {
            /** @description Current it may carry for good here; absent outside the table [A] */
            ampacityA?: number;
            /** @description Conducting section [mm²] */
            areaMm2: number;
            /** @description Conductor at a sustained full sine, estimated [°C] */
            conductorC: number;
            /** @description Current; absent where the load collapses [A] */
            currentA?: number;
            /** @description Size with its series */
            designation: string;
            /** @description Diameter of the solid conductor of this section [mm] */
            diameterMm: number;
            /** @description The same of nominal voltage [%] */
            dropPercent?: number;
            /** @description Drop on conductors and contacts [V] */
            dropV?: number;
            /** @description Source less this drop [V] */
            endVoltageV?: number;
            /** @description Short-circuit current at the far end [A] */
            faultA?: number;
            /**
             * @description The limit that kept the smaller sizes out
             * @enum {string}
             */
            governedBy: "drop" | "ampacity" | "fuse" | "short-circuit" | "terminal" | "smallest-size";
            /** @description Largest fuse by the policy [A] */
            highestFuseA?: number;
            /** @description Heat along the run at full sine, hot [W] */
            hotLossW: number;
            /** @description The same of nominal voltage [%] */
            hotTotalDropPercent: number;
            /** @description Cable, fuse, joints and return at that temperature [V] */
            hotTotalDropV: number;
            /** @description Conductors out and back, and contactOhm [Ω] */
            loopOhm: number;
            /** @description Heat in conductors and contacts [W] */
            lossW?: number;
            /** @description Resistance at the temperature of the drop [Ω/m] */
            ohmPerM: number;
        };
        /** @description A fuse-link of a standard family. */
        ChosenFuse: {
            /** @description Breaking capacity [A] */
            breakingA: number;
            /** @description What it looks like */
            form: string;
            placement: components["schemas"]["FusePlacement"];
            /** @description Rated current [A] */
            ratingA: number;
            /** @description Standard of the family */
            standard: string;
            /** @description Family */
            type: components["schemas"]["FuseType"];
            /** @description Rated voltage to ask for, at least the system’s class [V] */
            voltageV: number;
        };
        /** @description The vehicle’s own load, or another with a steady current. */
        CircuitAccessory: {
            /** @description While the engine runs [A] */
            currentA: number;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description Point of its minus pole */
            minus: string;
            /** @description While it stands; else nothing [A] */
            parkedA?: number;
            /** @description Point of its plus pole */
            plus: string;
        };
        /** @description An alternator with its regulator, or a charger from the mains or the traction battery. */
        CircuitAlternator: {
            /** @description Most it gives when driving, hot [A] */
            drivingA: number;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description Most it gives at idle, hot [A] */
            idleA: number;
            /** @description Point of its minus pole */
            minus: string;
            /** @description Point of its plus pole */
            plus: string;
            /** @description Voltage it holds [V] */
            setV: number;
            /** @description Fall of its voltage with its current [Ω] */
            slopeOhm?: number;
        };
        /** @description An amplifier between two points. */
        CircuitAmplifier: {
            /** @description Class of the output stage; sets efficiency and partial-load law */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Voltage at which its converter stops [V] */
            dropOutV?: number;
            /** @description Output over input at rated output, from the data sheet; beats the class [1] */
            efficiency?: number;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description Input current at rated output, from the data sheet; beats the class [A] */
            inputCurrentA?: number;
            /** @description Supply voltage of that input current; else ratedVoltageV [V] */
            inputVoltageV?: number;
            /** @description Load wired to it: one of the ratings, or above one, whose draw then bounds it [Ω] */
            loadOhm?: number;
            /** @description Point of its minus pole */
            minus: string;
            /** @description Name for the answer */
            name?: string;
            /** @description Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Point of its plus pole */
            plus: string;
            /** @description Continuous RMS output of all driven channels into the wired load; or give ratings and loadOhm [W] */
            powerW?: number;
            /** @description Draw at silence, switched on [W] */
            quiescentW?: number;
            /** @description What the power stands for; peak figures are refused */
            ratedAs?: components["schemas"]["RatedPower"];
            /** @description Supply voltage of the power rating [V] */
            ratedVoltageV?: number;
            /** @description Published outputs by load */
            ratings?: components["schemas"]["AmplifierLoadRating"][];
            /**
             * @description Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** @description Draw when switched off [A] */
            standbyA?: number;
        };
        /** @description A battery; what is left out is taken from its safe end. */
        CircuitBattery: {
            /** @description Capacity of the bank at 20 h [A·h] */
            capacityAh?: number;
            /** @description Its resistance while it takes current [Ω] */
            chargingOhm?: number;
            /** @description Kind of battery; with capacityAh in place of the cold cranking current */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** @description Cold cranking current, from which both ends of the resistance follow [A] */
            coldCrankingA?: number;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description Point of its minus pole */
            minus: string;
            /** @description Open-circuit voltage of the battery [V] */
            openCircuitV?: number;
            /** @description Point of its plus pole */
            plus: string;
            /** @description Internal resistance of the battery [Ω] */
            resistanceOhm?: number;
        };
        /** @description One cable; runs side by side are cables side by side. */
        CircuitCable: {
            /** @description Hottest surroundings along the run [°C] */
            ambientC?: number;
            /** @description Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** @description Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
            conductor?: components["schemas"]["Conductor"];
            /** @description Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series */
            designation: string;
            /** @description Point it starts at */
            from: string;
            /** @description Series of the size; AWG, SAE and mm² are different sizes */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description Temperature class printed on the insulation [°C] */
            insulationC?: number;
            /** @description One of them [Ω] */
            jointOhm?: number;
            /** @description Lugs and contacts on it */
            joints?: number;
            /** @description Conductor length [m] */
            lengthM: number;
            /** @description Where a metric copper size takes its resistance from */
            metricResistance?: components["schemas"]["MetricResistance"];
            /** @description Resistivity at 20 °C in place of the metal’s; metric sizes then use their nominal area [Ω·m] */
            resistivityOhmM?: number;
            /** @description Whether it lies in a conduit all the way */
            sheathed?: boolean;
            /** @description Spaces the run passes; the hottest gives the ambient when ambientC is left out */
            spaces?: components["schemas"]["RunSpace"][];
            /** @description Resistance of the stranded over the solid conductor [1] */
            strandingFactor?: number;
            /** @description Temperature coefficient at 20 °C in place of the metal’s [1/K] */
            temperatureCoefficientPerK?: number;
            /** @description Point it ends at */
            to: string;
        };
        /** @description What can flow in a cable of the plus side for good. */
        CircuitCableGuard: {
            /** @description What it carries in its surroundings [A] */
            ampacityA?: number;
            /** @description The same from its second point [A] */
            fromEndA?: number;
            /** @description Into a fault, from its first point, every fuse whole; absent without limit [A] */
            fromStartA?: number;
            /** @description Neither of them above its ampacity */
            guarded: boolean;
            /** @description Its name */
            id: string;
            /** @description Most that flows at full sine [A] */
            loadA?: number;
        };
        /** @description A converter or charger from one voltage to another: what it gives is limited, what it takes follows from that. */
        CircuitConverter: {
            /** @description Output over input [1] */
            efficiency?: number;
            /** @description Input that its maker allows [V] */
            highestInputV?: number;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description What it takes with nothing at its output [W] */
            idleW?: number;
            /** @description Point of the minus of its input */
            inMinus: string;
            /** @description Point of its input */
            inPlus: string;
            /** @description Input below which it stops [V] */
            lowestInputV?: number;
            /** @description Whether it rests while the engine stands */
            onlyWithEngine?: boolean;
            /** @description Point of the minus of its output; the same as that of the input where they are one */
            outMinus: string;
            /** @description Point of its output */
            outPlus: string;
            /** @description Most it gives at its output [A] */
            ratedA: number;
            /** @description Voltage it holds at its output [V] */
            setV: number;
            /** @description Fall of its voltage with its current [Ω] */
            slopeOhm?: number;
        };
        /** @description A fuse between two points; it belongs to no cable. */
        CircuitFuse: {
            /** @description What its maker says it breaks [A] */
            breakingA?: number;
            /** @description Point it starts at */
            from: string;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description Voltage its maker rates it for [V] */
            ratedVoltageV?: number;
            /** @description Rating [A] */
            ratingA: number;
            /** @description Its resistance; else 0.09 V over its rating [Ω] */
            resistanceOhm?: number;
            /** @description Point it ends at */
            to: string;
            /** @description Family; gives its breaking capacity */
            type?: components["schemas"]["FuseType"];
        };
        /** @description What a fuse has to carry and to break. */
        CircuitFuseGuard: {
            /** @description What it breaks, where known [A] */
            breakingA?: number;
            /** @description Most that flows through it with dense bass [A] */
            heavyA?: number;
            /** @description Its name */
            id: string;
            /** @description Most that flows through it at full sine [A] */
            loadA?: number;
            /** @description Dead short behind it, strong batteries, cold fuses [A] */
            prospectiveA: number;
        };
        /** @description Anything else that conducts: body, engine strap, relay, battery sensor, a cable of the vehicle. Never judged. */
        CircuitLink: {
            /** @description Whether that figure is a guess: no stop rests on it */
            assumed?: boolean;
            /** @description Point it starts at */
            from: string;
            /** @description Name of this part, once in the circuit */
            id: string;
            /** @description A relay that opens while the engine stands */
            opensWithoutEngine?: boolean;
            /** @description Its resistance [Ω] */
            resistanceOhm: number;
            /** @description Point it ends at */
            to: string;
        };
        /** @description A circuit; the minus pole of the first battery is 0 V. */
        CircuitRequest: {
            /** @description Other loads */
            accessories?: components["schemas"]["CircuitAccessory"][];
            /** @description Alternators and chargers */
            alternators?: components["schemas"]["CircuitAlternator"][];
            /** @description Amplifiers */
            amplifiers: components["schemas"]["CircuitAmplifier"][];
            /** @description Batteries */
            batteries: components["schemas"]["CircuitBattery"][];
            /** @description Cables */
            cables?: components["schemas"]["CircuitCable"][];
            /** @description Of the cables while the voltages are read [°C] */
            conductorTemperatureC?: number;
            /** @description Converters and chargers from one voltage to another */
            converters?: components["schemas"]["CircuitConverter"][];
            /** @description Fuses */
            fuses?: components["schemas"]["CircuitFuse"][];
            /** @description Other conductors */
            links?: components["schemas"]["CircuitLink"][];
            starter?: components["schemas"]["CircuitStarter"];
            /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
            systemVoltageV: number;
        };
        /** @description The circuit solved and judged. */
        CircuitResult: {
            /** @description Batteries without a fuse at their end */
            bareSources: string[];
            /** @description Cables of the plus side */
            cables: components["schemas"]["CircuitCableGuard"][];
            /** @description Times the power of the full sine that still stands, driving; absent from twice upwards [1] */
            collapseMargin?: number;
            /** @description Faults at the amplifiers */
            farFaults: components["schemas"]["FarFault"][];
            /** @description Fuses */
            fuses: components["schemas"]["CircuitFuseGuard"][];
            /** @description Fuses one behind the other */
            series: components["schemas"]["FuseSeries"][];
            /** @description From silence upwards */
            states: components["schemas"]["CircuitState"][];
        };
        /** @description The starter; with it a cold start is worked out. */
        CircuitStarter: {
            /** @description Point of its minus pole */
            minus: string;
            /** @description Point of its plus pole */
            plus: string;
            /** @description Its resistance while it turns the cold engine [Ω] */
            resistanceOhm: number;
        };
        /** @description The circuit at one level of the music and the engine. */
        CircuitState: {
            /**
             * @description What the engine does
             * @enum {string}
             */
            engine: "idling" | "driving" | "cranking" | "off";
            /**
             * @description Level of the music
             * @enum {string}
             */
            level: "silence" | "average" | "heavy" | "full-sine" | "cold-start";
            /** @description Every part with a supply */
            parts: components["schemas"]["PartCurrent"][];
            /** @description Every point with a supply; empty where it does not stand */
            points: components["schemas"]["PointVoltage"][];
            /** @description Whether there is a steady state at all */
            stands: boolean;
            /** @description Converters that stop because their input is too low */
            stopped?: string[];
            /** @description Where it does not stand: share of the regulated power that would [1] */
            sustainableShare?: number;
            /** @description Amplifiers and accessories that nothing feeds */
            withoutSupply: string[];
        };
        /** @description A distance that was checked. */
        Clearance: {
            /** @description What there is; negative when they overlap [mm] */
            availableMm: number;
            /** @description What to what */
            between: string;
            /** @description What there should be [mm] */
            neededMm: number;
            /** @description Whether there is enough */
            passes: boolean;
            /** @description The rule */
            why: string;
        };
        /** @description Square rod glued along inner edges. */
        Cleats: {
            /** @description Length of all rods together [mm] */
            lengthMm: number;
            /** @description Side of the rod [mm] */
            sideMm: number;
        };
        /** @description One tight chamber behind the cone. */
        ClosedBox: {
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "closed";
            rear: components["schemas"]["ClosedChamber"];
        };
        /** @description A chamber without opening. */
        ClosedChamber: {
            /** @description Q of the absorption at the frequency of the chamber; absent: none [1] */
            absorptionQ?: number;
            /** @description Q of the leak to the outside at the frequency of the chamber; absent: tight [1] */
            leakQ?: number;
            /** @description Acoustic volume for all drivers together [L] */
            netVolumeL: number;
        };
        /** @description A balanced network made the usual way: the coils of each driver first, then the drivers. */
        CoilArrangement: {
            /** @description Whether the output may drive this load; absent when no minimum was given */
            allowed?: boolean;
            /**
             * @description How the coils of each driver are joined
             * @enum {string}
             */
            coilsInDriver: "single" | "series" | "parallel" | "series-parallel";
            /** @description Drivers in series in each string */
            driversInSeries: number;
            /** @description The same in words */
            join: string;
            /** @description Load the amplifier sees [Ω] */
            ohm: number;
            /** @description Strings in parallel */
            parallelStrings: number;
            /** @description Load over the impedance of one coil, as a fraction in lowest terms */
            ratio: string;
        };
        /**
         * @description How the coils of a driver are joined.
         * @enum {string}
         */
        CoilConnection: "one-coil" | "series" | "parallel" | "series-parallel";
        /** @description The coil at the given drive, for a programme of equal power in every octave: an estimate. */
        CoilHeating: {
            /** @description Temperature around the driver [°C] */
            ambientC: number;
            /** @description Mean heat in one coil once warm [W] */
            coilHeatW: number;
            /** @description Thermal resistance from one coil to its magnet [K/W] */
            coilKPerW: number;
            /** @description Level lost in the mass-controlled band, once warm [dB] */
            compressionDb: number;
            /** @description Thermal resistance from the magnet to the air [K/W] */
            magnetKPerW: number;
            /** @description What the coil stands [°C] */
            maximumCoilC: number;
            /**
             * @description What the coil is wound of
             * @enum {string}
             */
            metal: "copper" | "aluminium";
            /** @description Temperature at which it settles; at most 1000 [°C] */
            steadyCoilC: number;
            /** @description DC resistance of the drivers as they are joined, once warm [Ω] */
            steadyReOhm: number;
            /** @description With a time constant: the way there */
            warming?: components["schemas"]["WarmingMoment"][];
        };
        /** @description The way of the heat: coil to magnet, magnet to air. Without `coilKPerW` a rise of 180 K at the rated power of the driver is assumed. */
        CoilHeatingRequest: {
            /** @description Temperature around the driver [°C] */
            ambientC?: number;
            /** @description Thermal resistance from one coil to its magnet [K/W] */
            coilKPerW?: number;
            /** @description Time constant of the coil; with it the warming over time is given [s] */
            coilTimeConstantS?: number;
            /** @description Thermal resistance from the magnet to the air; 0 when absent [K/W] */
            magnetKPerW?: number;
            /** @description Time constant of the magnet [s] */
            magnetTimeConstantS?: number;
            /** @description What the coil stands [°C] */
            maximumCoilC?: number;
            /**
             * @description What the coil is wound of
             * @enum {string}
             */
            metal?: "copper" | "aluminium";
        };
        /** @description Terminals that are joined together. */
        CoilJoint: {
            /** @description `amplifier +`, `amplifier -`, or a joint between coils */
            name: string;
            /** @description The terminals that meet here */
            terminals: string[];
        };
        /** @description One load, with the best network that presents it. */
        CoilLoad: {
            /** @description Whether the output may drive this load; absent when no minimum was given */
            allowed?: boolean;
            /** @description Whether every coil takes the same power */
            balanced: boolean;
            /** @description Power in each coil of a balanced network [W] */
            coilPowerW?: number;
            /** @description Power in the hottest coil of an unbalanced network [W] */
            hottestCoilPowerW?: number;
            /** @description How the coils are joined */
            join: string;
            /** @description Load the amplifier sees [Ω] */
            ohm: number;
            /** @description Load over the impedance of one coil, as a fraction in lowest terms; absent for unlike coils */
            ratio?: string;
            /** @description Share of the power in each coil, driver by driver; absent when all are equal */
            shares?: number[];
        };
        /** @description Another version of the driver. */
        CoilsPatch: {
            /** @description Its coils. */
            coils: {
                /** @description Rated impedance of one coil [Ω] */
                ratedOhm: number;
            };
        };
        /** @description The load to wire, terminal by terminal. */
        CoilWiringChosen: {
            /** @description How the coils are joined */
            join: string;
            /** @description Every joint, the two of the amplifier first */
            joints: components["schemas"]["CoilJoint"][];
            /** @description Load the amplifier sees [Ω] */
            ohm: number;
            /** @description Direct-current resistance of the whole load, with coilReOhm given [Ω] */
            reOhm?: number;
            /** @description The work in its order, ending with the checks */
            steps: string[];
            /** @description Why this load */
            why: string;
        };
        /** @description The coils of one or more drivers, to be joined to one load. */
        CoilWiringRequest: {
            /** @description The cable from the amplifier to the coils; needs totalPowerW */
            cable?: components["schemas"]["SpeakerCableRequest"];
            /** @description Lowest load of ONE channel of a pair that is to be bridged; the bridged pair needs twice that [Ω] */
            channelMinimumOhm?: number;
            /** @description Rated impedance of one coil, when all coils are alike [Ω] */
            coilOhm?: number;
            /** @description Direct-current resistance of one coil, for like coils [Ω] */
            coilReOhm?: number;
            /** @description Rated impedance of every coil when they differ, driver by driver; unlike coils: at most 6 */
            coilsOhm?: number[];
            /** @description Voice coils of each driver */
            coilsPerDriver: number;
            /** @description Drivers */
            driverCount: number;
            /** @description Lowest load the output may drive, as the data sheet states it for the way it is used [Ω] */
            minimumOhm?: number;
            /** @description Load wished for [Ω] */
            targetOhm?: number;
            /** @description Power into the whole load [W] */
            totalPowerW?: number;
        };
        /** @description The loads the coils can present, and the wiring of one. */
        CoilWiringResult: {
            /** @description The usual ways of joining like coils, by load. Ascending */
            arrangements?: components["schemas"]["CoilArrangement"][];
            /** @description Loudspeaker cable for the chosen load; absent when no size passes */
            cable?: components["schemas"]["SpeakerCable"];
            /** @description Every size considered, thin to thick, each with the limit it breaks */
            cableCandidates?: components["schemas"]["SpeakerCableCandidate"][];
            /** @description The load to wire; absent when none is allowed */
            chosen?: components["schemas"]["CoilWiringChosen"];
            /** @description Coils in all */
            coilCount: number;
            /** @description Power in each coil of any balanced network of like coils [W] */
            coilPowerW?: number;
            /** @description Different loads among the networks considered */
            distinctLoadCount: number;
            /** @description Power in each driver of any balanced network of like coils [W] */
            driverPowerW?: number;
            /** @description Every balanced load; up to 6 coils every series-parallel load, at most the 64 most even. Ascending */
            loads: components["schemas"]["CoilLoad"][];
            /** @description Lowest load not below the limit, of the balanced ones where there are any; absent when there is none [Ω] */
            lowestAllowedOhm?: number;
            /** @description The limit that was applied; twice the channel minimum for a bridged pair [Ω] */
            lowestLoadOhm?: number;
            /** @description Load nearest to the target in ratio, allowed or not, of the balanced ones where there are any; of two equally near the lower [Ω] */
            nearestOhm?: number;
            /** @description Series-parallel networks that use every coil once; absent above 6 coils */
            networkCount?: number;
        };
        /** @description One step of switching on for the first time. */
        CommissioningStep: {
            /** @description Cautions that belong to the step */
            cautions: components["schemas"]["CautionCode"][];
            /** @description Name of the step */
            id: string;
            /** @description Work of a careful first build [min] */
            minutes: number;
            /** @description Place in the whole work; the numbers of the build go on */
            number: number;
            /** @description What must be seen before the next step */
            passIf: string;
            /**
             * @description `power` up to the running engine; `gain`, without drivers; `sound`, the first; `proof` under load, and handing over
             * @enum {string}
             */
            stage: "power" | "gain" | "sound" | "proof";
            /** @description What to do */
            text: string;
            /** @description The step in a few words */
            title: string;
            /** @description Tools */
            tools: string[];
            /** @description Rows of the bill it takes */
            uses?: components["schemas"]["BillPart"][];
        };
        /** @description A plan on the screen of a phone. */
        CompactPlan: {
            /** @description What to buy */
            buy: components["schemas"]["BuyLine"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Every caution of the plan, the gravest first; nothing is left out here */
            cautions: components["schemas"]["CautionLine"][];
            /** @description Title as given */
            name?: string;
            /** @description The system in one sentence */
            sentence: string;
            /** @description All steps in order; the whole plan says how each is done */
            steps: components["schemas"]["StepLine"][];
            summary: components["schemas"]["PlanSummary"];
        };
        /** @description Level at one frequency, for comparing boxes. */
        ComparedLevel: {
            /** @description Frequency [Hz] */
            frequencyHz: number;
            /** @description Level re the plateau of the bare drivers in half space [dB] */
            relativeDb: number;
        };
        /** @description The full small-signal set in the wanted coil connection. */
        CompletedDriver: {
            /** @description Force factor [T·m] */
            blTm: number;
            /** @description Compliance of the suspension [mm/N] */
            cmsMmPerN: number;
            /** @description Free-air resonance [Hz] */
            fsHz: number;
            /** @description Coil inductance [mH] */
            leMh?: number;
            /** @description Resistance across the inductance [Ω] */
            leParallelOhm?: number;
            /** @description Moving mass with its air load [g] */
            mmsG: number;
            /** @description Continuous power rating [W] */
            powerW?: number;
            /** @description Electrical Q [1] */
            qes: number;
            /** @description Mechanical Q [1] */
            qms: number;
            /** @description Total Q [1] */
            qts: number;
            /** @description Direct-current resistance of the coil [Ω] */
            reOhm: number;
            /** @description Mechanical resistance [kg/s] */
            rmsKgPerS: number;
            /** @description Effective area of the cone [cm²] */
            sdCm2: number;
            /** @description Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
            vasAir?: components["schemas"]["VasAir"];
            /** @description Air volume as compliant as the suspension [L] */
            vasL: number;
            /** @description Linear excursion, one way, peak [mm] */
            xmaxMm?: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        CompleteDriverParametersAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["DriverParametersResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/drivers/parameters gives. */
        CompleteDriverParametersDone: {
            answer: components["schemas"]["CompleteDriverParametersAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["DriverParametersRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/drivers/parameters gives, or why not. */
        CompleteDriverParametersPart: components["schemas"]["CompleteDriverParametersDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description Result with its cautions, assumed defaults and sources. */
        ComputeCircuitAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["CircuitResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/supply/circuit gives. */
        ComputeCircuitDone: {
            answer: components["schemas"]["ComputeCircuitAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["CircuitRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/supply/circuit gives, or why not. */
        ComputeCircuitPart: components["schemas"]["ComputeCircuitDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description Result with its cautions, assumed defaults and sources. */
        ComputeCurrentAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["SupplyCurrentResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/supply/current gives. */
        ComputeCurrentDone: {
            answer: components["schemas"]["ComputeCurrentAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["SupplyCurrentRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/supply/current gives, or why not. */
        ComputeCurrentPart: components["schemas"]["ComputeCurrentDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description Result with its cautions, assumed defaults and sources. */
        ComputeFeederAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["FeederResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        ComputeResponseAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["EnclosureResponse"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/enclosures/response gives. */
        ComputeResponseDone: {
            answer: components["schemas"]["ComputeResponseAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["EnclosureResponseRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/enclosures/response gives, or why not. */
        ComputeResponsePart: components["schemas"]["ComputeResponseDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description Result with its cautions, assumed defaults and sources. */
        ComputeToleranceAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["EnclosureTolerance"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /**
         * @description Metal of a conductor.
         * @enum {string}
         */
        Conductor: "copper" | "aluminium" | "copper-clad-10" | "copper-clad-15" | "unknown";
        /** @description A chamber, which is a node of the network. */
        CustomChamber: {
            /** @description Q of the absorption at the frequency of the chamber; absent: none [1] */
            absorptionQ?: number;
            /** @description Q of the leak to the outside at the frequency of the chamber; absent: tight [1] */
            leakQ?: number;
            /** @description Frequency at which the loss Qs hold [Hz] */
            lossHz?: number;
            /** @description Name of your own */
            name: string;
            /** @description Acoustic volume for all drivers together [L] */
            netVolumeL: number;
        };
        /** @description Equal drivers that share both sides. */
        CustomDriverGroup: {
            /** @description Number of drivers */
            count?: number;
            /** @description Before the cones: `outside`, `behind` or a chamber */
            front: string;
            /** @description Drivers in each string; the strings lie in parallel */
            inSeries?: number;
            /** @description Wired against the others */
            inverted?: boolean;
            /** @description Name of your own */
            name: string;
            /** @description Behind the cones: `outside`, `behind` or a chamber */
            rear: string;
        };
        /** @description Chambers and what lies between them, given directly. All drivers are of the one kind of the request. */
        CustomEnclosure: {
            /** @description Chambers */
            chambers?: components["schemas"]["CustomChamber"][];
            /**
             * @description How the groups are joined
             * @enum {string}
             */
            connection?: "parallel" | "series";
            /** @description Groups of drivers */
            driverGroups: components["schemas"]["CustomDriverGroup"][];
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "custom";
            /** @description Leaks between places */
            leaks?: components["schemas"]["CustomLeak"][];
            /** @description Passive radiators */
            passiveRadiators?: components["schemas"]["CustomPassiveRadiators"][];
            /** @description Ports */
            ports?: components["schemas"]["CustomPort"][];
        };
        /** @description A resistance between two places. */
        CustomLeak: {
            /** @description One end: `outside`, `behind` or a chamber */
            from: string;
            /** @description Acoustic resistance [Pa·s/m³] */
            resistancePaSPerM3: number;
            /** @description Other end: `outside`, `behind` or a chamber */
            to: string;
        };
        /** @description Equal passive radiators between two places. */
        CustomPassiveRadiators: {
            /** @description Effective area of one radiator [cm²] */
            areaCm2: number;
            /** @description Compliance of one radiator [mm/N] */
            complianceMmPerN: number;
            /** @description Number of equal radiators */
            count?: number;
            /** @description One side: `outside`, `behind` or a chamber */
            from: string;
            /** @description Moving mass of one radiator with air load and added weight [g] */
            massG: number;
            /** @description Name of your own */
            name: string;
            /** @description Mechanical Q of one radiator alone in free air; absent: no loss [1] */
            qm?: number;
            /** @description Other side: `outside`, `behind` or a chamber */
            to: string;
        };
        /** @description Equal ports between two places. */
        CustomPort: {
            /** @description Cross-section of one port [cm²] */
            areaCm2: number;
            /** @description Number of equal ports */
            count?: number;
            /** @description Sum of both end corrections over the radius of one port: flush 0.85, free 0.613 [1] */
            endFactor?: number;
            /** @description One end: `outside`, `behind` or a chamber */
            from: string;
            /** @description Physical length of one port [mm] */
            lengthMm: number;
            /** @description Frequency at which the loss Qs hold [Hz] */
            lossHz?: number;
            /** @description Q of the friction in the port at its tuning; absent: no friction [1] */
            lossQ?: number;
            /** @description Name of your own */
            name: string;
            /** @description Other end: `outside`, `behind` or a chamber */
            to: string;
        };
        /** @description A hole, or a rebate when it has a depth. */
        CutOut: {
            /** @description Inside corners of a rectangle [mm] */
            cornerRadiusMm?: number;
            /** @description Of a circle [mm] */
            diameterMm?: number;
            /** @description Of a rectangle, along v [mm] */
            heightMm?: number;
            /**
             * @description Outline
             * @enum {string}
             */
            kind: "circle" | "rectangle";
            /** @description What goes into it */
            label: string;
            /**
             * @description What it is for
             * @enum {string}
             */
            purpose: "driver" | "driver-rebate" | "passive-radiator" | "port" | "terminal" | "amplifier" | "cable" | "brace-window";
            /** @description Depth from the outer face; right through when absent [mm] */
            rebateDepthMm?: number;
            screwCircle?: components["schemas"]["ScrewCircle"];
            /** @description Centre, to the right of the lower left corner of the outer face [mm] */
            uMm: number;
            /** @description Centre, above the lower left corner of the outer face [mm] */
            vMm: number;
            /** @description Of a rectangle, along u [mm] */
            widthMm?: number;
        };
        /** @description A system that keeps every limit. */
        Design: {
            /** @description Alignment of the box, the best of those that suit */
            alignment: string;
            /** @description Name of the amplifier */
            amplifier: string;
            /** @description Cautions that not every design shares */
            cautions: components["schemas"]["Caution"][];
            /** @description Name of the driver */
            driver: string;
            /** @description Drivers */
            driverCount: number;
            figures: components["schemas"]["DesignFigures"];
            /** @description Kind of box */
            kind: components["schemas"]["BoxKind"];
            /** @description What /v1/plans takes to plan this design */
            plan: components["schemas"]["PlanRequest"];
            points: components["schemas"]["DesignPoints"];
            /** @description Place in the order, 1 the best */
            rank: number;
            /** @description Weighted sum of the points; only differences mean something [dB] */
            score: number;
            /** @description The limit with the least to spare */
            tightest?: components["schemas"]["LimitReading"];
        };
        /** @description The figures a design is judged by, at the voltage the gain is set to. */
        DesignFigures: {
            /** @description Largest air speed in the port, peak [m/s] */
            airSpeedMPerS?: number;
            /** @description Current on average with music [A] */
            averageA: number;
            /** @description Largest excursion, peak, one way [mm] */
            coneExcursionMm: number;
            /** @description That over Xmax [1] */
            excursionOfXmax: number;
            /** @description Half power [Hz] */
            f3Hz: number;
            /** @description Current at full sine [A] */
            fullSineA: number;
            /** @description Level at levelHz, held back where a limit of the parts would be passed there [dB] */
            levelDb: number;
            /** @description Load on each output [Ω] */
            loadOhm: number;
            /** @description Box with its drivers [kg] */
            massKg: number;
            /** @description Air in the box [L] */
            netVolumeL: number;
            /** @description Space the box takes [L] */
            outerVolumeL: number;
            /** @description Continuous power of all outputs together after the gain is set [W] */
            powerW: number;
            /** @description Drivers and amplifier; absent where one has no price [1] */
            price?: number;
            /** @description Tuning of a vented box [Hz] */
            tuningHz?: number;
        };
        /**
         * @description What a search is after.
         * @enum {string}
         */
        DesignGoal: "everyday" | "low" | "loud" | "tight" | "small";
        /** @description What a design must keep; whatever is absent is no limit. */
        DesignLimits: {
            /** @description Most peak air speed in the port [m/s] */
            airSpeedMPerS?: number;
            /** @description Most current on average with music [A] */
            averageA?: number;
            /** @description Most peak excursion one way over Xmax; 1 when absent [1] */
            excursionOfXmax?: number;
            /** @description Half power must lie at or below [Hz] */
            f3AtMostHz?: number;
            /** @description Most current at full sine, other amplifiers of the run in it [A] */
            fullSineA?: number;
            /** @description Least level at levelHz, half space, 1 m, re 20 µPa [dB] */
            levelAtLeastDb?: number;
            /** @description Most mass of the box with its drivers [kg] */
            massKg?: number;
            /** @description Most space of the box, outside [L] */
            outerVolumeL?: number;
            /** @description Most that drivers and amplifier may cost together [1] */
            pricePerSystem?: number;
        };
        /** @description What each figure adds to the score. */
        DesignPoints: {
            /** @description By the size of the box [dB] */
            box: number;
            /** @description By current [dB] */
            current: number;
            /** @description By level [dB] */
            level: number;
            /** @description By price [dB] */
            price?: number;
            /** @description By f3 [dB] */
            reach: number;
        };
        /** @description Candidates, the car, its supply and the limits. Drivers × counts × amplifiers × kinds may be at most 36, a third of that under a leaning seat (`seatSlopeDeg`), half with more than two blocks (`keepOuts`). */
        DesignSearchRequest: {
            air?: components["schemas"]["Air"];
            /** @description Amplifiers to choose from */
            amplifiers: components["schemas"]["SearchAmplifier"][];
            board: components["schemas"]["PlanBoard"];
            car: components["schemas"]["PlanCar"];
            /** @description How many drivers to try; 1 and 2 when absent */
            driverCounts?: number[];
            /** @description Drivers to choose from */
            drivers: components["schemas"]["SearchDriver"][];
            finish?: components["schemas"]["PlanFinish"];
            /** @description Kinds of box to try; both when absent */
            kinds?: components["schemas"]["BoxKind"][];
            /** @description Where the level is compared [Hz] */
            levelHz?: number;
            limits?: components["schemas"]["DesignLimits"];
            port?: components["schemas"]["SearchPort"];
            /**
             * @description `balance` weighs all alike; any other lets that figure decide: `level` at levelHz, `reach` the lowest f3, `box` the smallest box, `price`, `current`
             * @enum {string}
             */
            rankBy?: "balance" | "level" | "reach" | "box" | "price" | "current";
            /** @description Most designs, and most rejections, in the answer */
            show?: number;
            signal?: components["schemas"]["PlanSignal"];
            supply: components["schemas"]["PlanSupply"];
            weights?: components["schemas"]["DesignWeightWish"];
        };
        /** @description Designs in order, and why the others were dropped. */
        DesignSearchResult: {
            /** @description The best first */
            designs: components["schemas"]["Design"][];
            /** @description Where the level was compared [Hz] */
            levelHz: number;
            /** @description Of them designs */
            rankedCount: number;
            /** @description By reason, at most `show` of them */
            rejected: components["schemas"]["RejectedDesign"][];
            /** @description All rejections by their reason */
            rejectedBy: components["schemas"]["RejectionCount"][];
            /** @description Of them dropped */
            rejectedCount: number;
            /** @description Systems weighed: drivers × counts × amplifiers × kinds */
            weighed: number;
            weights: components["schemas"]["DesignWeights"];
        };
        /** @description What each figure counts in the score. */
        DesignWeights: {
            /** @description Weight of the box: 10·log10 of its outside volume, three a doubling [1] */
            box: number;
            /** @description Weight of the current at full sine: 10·log10, three a doubling [1] */
            current: number;
            /** @description Weight of a decibel of level at levelHz [1] */
            level: number;
            /** @description Weight of the price: 10·log10, three a doubling [1] */
            price: number;
            /** @description Weight of the reach: 30·log10 of f3, nine an octave [1] */
            reach: number;
        };
        /** @description Weights in place of those that rankBy gives. */
        DesignWeightWish: {
            /** @description Weight of the box: 10·log10 of its outside volume, three a doubling [1] */
            box?: number;
            /** @description Weight of the current at full sine: 10·log10, three a doubling [1] */
            current?: number;
            /** @description Weight of a decibel of level at levelHz [1] */
            level?: number;
            /** @description Weight of the price: 10·log10, three a doubling [1] */
            price?: number;
            /** @description Weight of the reach: 30·log10 of f3, nine an octave [1] */
            reach?: number;
        };
        /** @description A digital output behind a converter with a line output. */
        DigitalSource: {
            /** @description The source is the vehicle's own and may equalise, delay and roll off */
            factory?: boolean;
            /**
             * @description Kind of source (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "digital";
            /** @description Line output of the converter at full scale [V] */
            levelV?: number;
            /** @description Output resistance of the converter [Ω] */
            outputOhm?: number;
        };
        /** @description Air that each thing takes. */
        Displaced: {
            /** @description Amplifier [L] */
            amplifierL: number;
            /** @description Rings behind the drivers [L] */
            baffleRingsL: number;
            /** @description Braces [L] */
            bracesL: number;
            /** @description Cleats [L] */
            cleatsL: number;
            /** @description Board between two chambers [L] */
            dividerL: number;
            /** @description Drivers [L] */
            driversL: number;
            /** @description Solid part of the lining [L] */
            liningL: number;
            /** @description Anything else given [L] */
            otherL: number;
            /** @description Ports, their walls and the air in them, which is mass and not spring [L] */
            portsL: number;
            /** @description Terminal cup [L] */
            terminalL: number;
            /** @description All of them [L] */
            totalL: number;
        };
        /** @description Board between the chambers of a band-pass box, parallel to the front; drivers may stand on it. */
        Divider: {
            /** @description Clear depth of the front chamber [mm] */
            fromFrontMm?: number;
            /** @description Instead: net volume of the front chamber [L] */
            frontNetVolumeL?: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        DrawBoxAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["BoxDrawings"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description The worst of the programme at the given drive, linear. */
        DrivePeaks: {
            /** @description Where [Hz] */
            coneExcursionHz: number;
            /** @description Excursion of a cone, one way, peak [mm] */
            coneExcursionMm: number;
            /** @description That excursion over Xmax [1] */
            coneExcursionOfXmax?: number;
            /** @description Current into the drivers, RMS [A] */
            currentA: number;
            /** @description Where [Hz] */
            currentHz: number;
            /** @description Where [Hz] */
            passiveRadiatorExcursionHz?: number;
            /** @description Excursion of a passive radiator, one way, peak [mm] */
            passiveRadiatorExcursionMm?: number;
            /** @description Where [Hz] */
            portAirSpeedHz?: number;
            /** @description Air speed in a port, peak [m/s] */
            portAirSpeedMPerS?: number;
        };
        /** @description One driver, its coils already joined. Area and resistance, and either the small-signal set (fs, Vas, two of Qms, Qes, Qts) or the mechanical set (Mms, Cms, Rms, Bl). Where both are given the small-signal set counts and the rest is held against it. */
        Driver: {
            /** @description Force factor of the coils as they are joined [T·m] */
            blTm?: number;
            /** @description Compliance of the suspension [mm/N] */
            cmsMmPerN?: number;
            /** @description Free-air resonance [Hz] */
            fsHz?: number;
            /** @description Second inductance, in series with the first [mH] */
            le2Mh?: number;
            /** @description Resistance across the second inductance [Ω] */
            le2ParallelOhm?: number;
            /** @description n of a lossy coil K·(jω)^n; 0.5 semi-inductance, 1 inductance [1] */
            leExponent?: number;
            /** @description K of a lossy coil K·(jω)^n, in place of the inductances [Ω·s^n] */
            leFactor?: number;
            /** @description Inductance of the coils as they are joined [mH] */
            leMh?: number;
            /** @description Resistance directly across the inductance (lossy coil) [Ω] */
            leParallelOhm?: number;
            /** @description Moving mass with air load [g] */
            mmsG?: number;
            /** @description Continuous thermal rating [W] */
            powerW?: number;
            /** @description Electrical Q at resonance [1] */
            qes?: number;
            /** @description Mechanical Q at resonance [1] */
            qms?: number;
            /** @description Total Q at resonance; stands in for one of the other two [1] */
            qts?: number;
            /** @description DC resistance of the coils as they are joined [Ω] */
            reOhm: number;
            /** @description Mechanical resistance [kg/s] */
            rmsKgPerS?: number;
            /** @description Effective piston area [cm²] */
            sdCm2: number;
            /** @description Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
            vasAir?: components["schemas"]["VasAir"];
            /** @description Air volume of equal compliance, as the sheet prints it [L] */
            vasL?: number;
            /** @description Linear excursion, one way, peak [mm] */
            xmaxMm?: number;
        };
        /** @description What follows from the set; half space, 1 m. */
        DriverFigures: {
            /** @description Air load on both sides of the cone without a baffle, as fs is measured; part of Mms [g] */
            airLoadG: number;
            /** @description Efficiency bandwidth product fs/Qes [Hz] */
            ebpHz: number;
            /** @description Reference efficiency [%] */
            efficiencyPercent: number;
            /** @description Modulus at the free-air resonance, inductance left out [Ω] */
            impedancePeakOhm: number;
            /** @description Level for 1 W into Re [dB] */
            level1WDb: number;
            /** @description Level at 2.83 V [dB] */
            level2V83Db: number;
            /** @description Level for 1 W into the rated impedance [dB] */
            levelRated1WDb?: number;
            /** @description Volume the cone sweeps one way, Sd·Xmax [L] */
            sweptVolumeL?: number;
        };
        /** @description The kind of box the driver leans to; a rule of thumb, not a computation. */
        DriverLeaning: {
            /**
             * @description Kind
             * @enum {string}
             */
            kind: "closed" | "either" | "vented";
            /** @description The figure and the rule */
            why: string;
        };
        /** @description Sizes of one driver, for the box. */
        DriverMounting: {
            /** @description Hole [mm] */
            cutOutDiameterMm?: number;
            /** @description Air one driver takes from the box; negative adds air [L] */
            displacementL?: number;
            /** @description Outer diameter [mm] */
            flangeDiameterMm?: number;
            /** @description Diameter of the motor [mm] */
            magnetDiameterMm?: number;
            /** @description Height of the motor [mm] */
            magnetHeightMm?: number;
            /** @description Mass of one driver [kg] */
            massKg?: number;
            /**
             * @description `reversed` puts the magnet outside
             * @enum {string}
             */
            mount?: "front" | "reversed";
            /** @description Outer face of the baffle to the rear of the motor [mm] */
            mountingDepthMm?: number;
            /** @description Rebate that lets the flange in [mm] */
            rebateDepthMm?: number;
            ring?: components["schemas"]["BaffleRing"];
            /** @description Circle of the fixing screws [mm] */
            screwCircleDiameterMm?: number;
            /** @description Fixing screws */
            screwCount?: number;
            /** @description Hole through the pole piece [mm] */
            ventDiameterMm?: number;
            /** @description Diameter of the voice coil [mm] */
            voiceCoilDiameterMm?: number;
        };
        /** @description A driver that hangs on the panel by a circle of screws. */
        DriverOnPanel: {
            /** @description Centre along the length; the middle when absent [mm] */
            fromEndMm?: number;
            /** @description Centre along the width; the middle when absent [mm] */
            fromSideMm?: number;
            /** @description Mass [kg] */
            massKg: number;
            /** @description Circle of the screws [mm] */
            screwCircleDiameterMm: number;
        };
        /** @description A data sheet to be completed and checked. */
        DriverParametersRequest: {
            air?: components["schemas"]["Air"];
            coils?: components["schemas"]["SheetCoils"];
            driver: components["schemas"]["DriverSheet"];
        };
        /** @description The full set, its origin, and whether the sheet can be believed. */
        DriverParametersResult: {
            /** @description Relations the sheet over-determines */
            checks: components["schemas"]["ParameterCheck"][];
            driver: components["schemas"]["CompletedDriver"];
            figures: components["schemas"]["DriverFigures"];
            leaning: components["schemas"]["DriverLeaning"];
            origins: components["schemas"]["ParameterOrigins"];
            /** @description Slips that would explain what is odd, none applied */
            slips: components["schemas"]["UnitSlip"][];
        };
        /** @description Equal drivers that share the enclosure. */
        Drivers: {
            /** @description Number of drivers, both of each isobaric pair */
            count?: number;
            /** @description Drivers in each string; the strings lie in parallel */
            inSeries?: number;
            isobaric?: components["schemas"]["IsobaricPairs"];
        };
        /** @description What a data sheet says of one driver; whatever is absent is worked out. */
        DriverSheet: {
            /** @description Force factor [T·m] */
            blTm?: number;
            /** @description Compliance of the suspension [mm/N] */
            cmsMmPerN?: number;
            /** @description Free-air resonance [Hz] */
            fsHz?: number;
            /** @description Coil inductance [mH] */
            leMh?: number;
            /** @description Resistance across the inductance [Ω] */
            leParallelOhm?: number;
            /** @description Printed sensitivity at 1 W, 1 m [dB] */
            level1WDb?: number;
            /** @description Printed sensitivity at 2.83 V, 1 m [dB] */
            level2V83Db?: number;
            /** @description Moving mass without air load, in place of Mms [g] */
            mmdG?: number;
            /** @description Moving mass with its air load [g] */
            mmsG?: number;
            /** @description Nominal diameter (12 in is 305 mm); used where Sd is absent [mm] */
            nominalDiameterMm?: number;
            /** @description Continuous power rating [W] */
            powerW?: number;
            /** @description Electrical Q [1] */
            qes?: number;
            /** @description Mechanical Q [1] */
            qms?: number;
            /** @description Total Q [1] */
            qts?: number;
            /** @description Rated impedance [Ω] */
            ratedImpedanceOhm?: number;
            /** @description Direct-current resistance of the coil [Ω] */
            reOhm?: number;
            /** @description Mechanical resistance [kg/s] */
            rmsKgPerS?: number;
            /** @description Effective area of the cone [cm²] */
            sdCm2?: number;
            /** @description Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
            vasAir?: components["schemas"]["VasAir"];
            /** @description Air volume as compliant as the suspension [L] */
            vasL?: number;
            /** @description Linear excursion, one way, peak [mm] */
            xmaxMm?: number;
        };
        /** @description A way to keep every limit, and what it costs. */
        DriveWay: {
            /** @description Mean of these levels against the plan; negative: quieter [dB] */
            againstPlanDb: number;
            /** @description Corner of the high-pass, second order; absent: none [Hz] */
            highPassHz?: number;
            /** @description At 25, 31.5, 40, 50 and 63 Hz where the figures of the plan are counted, held back by the limits */
            levelDb: number[];
            /** @description Net volume, where it is another [L] */
            netVolumeL?: number;
            /** @description Power of all outputs the gain is set for [W] */
            powerW: number;
            /**
             * @description `as-planned`; `less-power` without a high-pass; `higher-filter` at all the power the parts bear; `smaller-box` that bears all of it without a high-pass
             * @enum {string}
             */
            way: "as-planned" | "less-power" | "higher-filter" | "smaller-box";
        };
        /** @description An enclosure, told apart by its kind. */
        Enclosure: components["schemas"]["InfiniteBaffle"] | components["schemas"]["ClosedBox"] | components["schemas"]["VentedBox"] | components["schemas"]["PassiveRadiatorBox"] | components["schemas"]["BandPass4"] | components["schemas"]["BandPass6Parallel"] | components["schemas"]["BandPass6Series"] | components["schemas"]["CustomEnclosure"];
        /** @description One enclosure for the driver. */
        EnclosureCandidate: {
            /** @description Alignment; /v1/reference/alignments describes each */
            alignment: components["schemas"]["AlignmentId"];
            /** @description Half power by the closed form, coil inductance left out [Hz] */
            alignmentF3Hz?: number;
            /** @description Vas of all drivers over the volume behind them [1] */
            alpha: number;
            /** @description Air volume to build, where lining makes it appear larger [L] */
            builtVolumeL?: number;
            /** @description Resonance in the closed chamber [Hz] */
            fcHz?: number;
            /** @description Tuning of the front chamber [Hz] */
            frontTuningHz?: number;
            /** @description Acoustic volume of the front chamber [L] */
            frontVolumeL?: number;
            /** @description What it is good at, with its figures */
            goodAt: string;
            /** @description Kind of the enclosure */
            kind: components["schemas"]["EnclosureKind"];
            /** @description Name for people */
            name: string;
            /** @description Acoustic volume for all drivers; of the rear chamber where there are two [L] */
            netVolumeL: number;
            passiveRadiators?: components["schemas"]["SizedPassiveRadiators"];
            /** @description The first to look at of its kind */
            preferred: boolean;
            /** @description Total Q in the closed chamber, box losses not in it [1] */
            qtc?: number;
            response: components["schemas"]["CandidateResponse"];
            secondOpinion?: components["schemas"]["SecondOpinion"];
            /** @description Source of the alignment */
            source: components["schemas"]["SourceId"];
            space: components["schemas"]["SpaceCost"];
            /** @description Nothing is against it */
            suits: boolean;
            /** @description Tuning of the rear chamber [Hz] */
            tuningHz?: number;
            /** @description Tuning over free-air resonance [1] */
            tuningRatio?: number;
            /** @description Reasons with figures, those against first */
            why: string[];
        };
        /**
         * @description Kind of an enclosure.
         * @enum {string}
         */
        EnclosureKind: "closed" | "vented" | "passive-radiator" | "band-pass-4" | "band-pass-6-parallel" | "band-pass-6-series";
        /** @description The response of one enclosure. */
        EnclosureResponse: {
            cabin?: components["schemas"]["CabinModel"];
            curves: components["schemas"]["ResponseCurves"];
            limits?: components["schemas"]["LargeSignal"];
            /** @description Custom enclosures and isobaric pairs: every named part */
            parts?: components["schemas"]["PartCurve"][];
            scalars: components["schemas"]["ResponseScalars"];
            timeResponse?: components["schemas"]["TimeResponse"];
        };
        /** @description An enclosure, its drivers and what feeds them. */
        EnclosureResponseRequest: {
            air?: components["schemas"]["Air"];
            cabin?: components["schemas"]["Cabin"];
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            enclosure: components["schemas"]["Enclosure"];
            /** @description Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            /** @description A list of frequencies, or a range with equal ratios. Absent: 10 to 300 Hz. */
            frequenciesHz?: number[] | components["schemas"]["FrequencyRange"];
            limits?: components["schemas"]["Limits"];
            source: components["schemas"]["Source"];
            timeResponse?: components["schemas"]["TimeResponseRequest"];
        };
        /** @description A driver looking for its box. */
        EnclosureSizingRequest: {
            air?: components["schemas"]["Air"];
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            /** @description Kinds to weigh; closed and vented when absent */
            kinds?: components["schemas"]["EnclosureKind"][];
            lining?: components["schemas"]["SizingLining"];
            losses?: components["schemas"]["SizingLosses"];
            passiveRadiators?: components["schemas"]["SizingPassiveRadiators"];
            source?: components["schemas"]["SizingSource"];
            space?: components["schemas"]["SizingSpace"];
            wanted?: components["schemas"]["SizingWanted"];
        };
        /** @description Enclosures for the driver, and those that are none. */
        EnclosureSizingResult: {
            /** @description Candidates, by kind */
            candidates: components["schemas"]["EnclosureCandidate"][];
            drivers: components["schemas"]["BoxedDrivers"];
            /** @description Alignments without a member for this driver */
            unsuited: components["schemas"]["UnsuitedAlignment"][];
        };
        /** @description The spread of a response over its tolerances. */
        EnclosureTolerance: {
            /** @description One a percentile, in the order asked for */
            bands: components["schemas"]["ToleranceBand"][];
            figures: components["schemas"]["ToleranceFigures"];
            /** @description Frequencies of the curves */
            frequencyHz: number[];
            nominal: components["schemas"]["NominalCurves"];
            /** @description Number of systems drawn [1] */
            samples: number;
            /** @description Seed of the random numbers: the same request with it gives the same answer [1] */
            seed: number;
            /** @description By figure, the parameter with the greatest share first */
            sensitivities: components["schemas"]["Sensitivity"][];
            /** @description Share of the samples whose largest excursion keeps to Xmax [%] */
            withinXmaxPercent?: number;
        };
        /** @description A response, and how far its parts may differ. */
        EnclosureToleranceRequest: {
            air?: components["schemas"]["Air"];
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            enclosure: components["schemas"]["Enclosure"];
            /** @description Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            /** @description A list of frequencies, or a range with equal ratios. Absent: 10 to 300 Hz. */
            frequenciesHz?: number[] | components["schemas"]["FrequencyRange"];
            /** @description Percentiles of the bands. Absent: 5, 50, 95 */
            percentiles?: number[];
            /** @description Systems to draw; times (frequencies + 128) at most 912 000, less with more than two chambers. Absent: 500 */
            samples?: number;
            /** @description Seed of the random numbers. Absent: 1 */
            seed?: number;
            source: components["schemas"]["Source"];
            spread?: components["schemas"]["Spread"];
        };
        /** @description Playing with the engine off. */
        EngineOff: {
            /** @description Ordinary music and the parked car’s own load [A] */
            currentA: number;
            /** @description Fall of its voltage at a full sine [V] */
            fullSineSagV: number;
            /** @description Time to empty [h] */
            hoursToEmpty: number;
            /** @description Exponent used [1] */
            peukertExponent: number;
            /** @description Rest voltage of the full battery [V] */
            restV: number;
            /** @description Fall of its voltage at this current [V] */
            sagV: number;
            /** @description Time until the usable share is gone [h] */
            usableHours: number;
        };
        /** @description A peak or dip of the excursion. */
        ExcursionExtreme: {
            /** @description Excursion there, one way, peak [mm] */
            excursionMm: number;
            /** @description Where it lies [Hz] */
            frequencyHz: number;
        };
        /** @description Whether the cone needs a high-pass at the given drive, and which. The filters given are already counted. */
        ExcursionProtection: {
            /** @description Lowest tuning, below which an opening no longer holds the cone; or the closed resonance [Hz] */
            belowHz: number;
            /** @description Where [Hz] */
            excursionHz: number;
            /** @description Largest excursion below it, one way, peak [mm] */
            excursionMm: number;
            /** @description If needed: one for each order that can hold the cone */
            highPass: components["schemas"]["HighPassProtection"][];
            /** @description Whether that is more than Xmax */
            needed: boolean;
        };
        /**
         * @description A face of a box.
         * @enum {string}
         */
        FaceName: "front" | "back" | "top" | "bottom" | "left" | "right" | "divider";
        /** @description One face as a plate between the other panels. */
        FaceVibration: {
            /** @description Battens in each span */
            battens: number;
            /** @description Edges free to turn, with its braces and the drivers of given mass [Hz] */
            builtHz: number;
            /** @description Bare, edges held [Hz] */
            clampedHz: number;
            /** @description Volume it moves by [L] */
            displacedL?: number;
            /** @description Which */
            face: string;
            /** @description Frames and cheeks that cross it */
            frames: number;
            /** @description Under the pressure of the box, between free and held edges [mm] */
            largestBendingMm?: number;
            /** @description Free length [mm] */
            lengthMm: number;
            /** @description Whether frequency and bending do */
            passes: boolean;
            /** @description Bare, edges free to turn [Hz] */
            supportedHz: number;
            /** @description All its boards [mm] */
            thicknessMm: number;
            /** @description What keeps it out of the band [Hz] */
            wantedHz: number;
            /** @description Free width [mm] */
            widthMm: number;
        };
        /** @description A part that its resource refuses. */
        FailedPart: {
            /**
             * @description There is no answer
             * @enum {boolean}
             */
            done: false;
            /** @description Why this part could not be done */
            problem: components["schemas"]["Problem"];
            /** @description The request, as the resource reads it */
            request?: {
                [key: string]: unknown;
            };
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description The resource refuses what the plan leads to (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "failed";
        };
        /** @description A dead short at the terminals of an amplifier, weak batteries, warm cables. */
        FarFault: {
            /** @description Name of the amplifier */
            amplifier: string;
            /** @description Through it [A] */
            currentA: number;
            /** @description The fuse that is driven hardest; absent without one */
            fuse?: string;
            /** @description The converter that alone feeds it and limits the current: no fuse has to open */
            limitedBy?: string;
            /** @description Current over its rating [1] */
            multiple: number;
        };
        /** @description An amplifier on the feeder: inputPowerW, or currentA, or power with class, efficiency or input current. */
        FeederAmplifier: {
            /** @description From the distribution block to this amplifier */
            branch?: components["schemas"]["FeederStage"];
            /** @description Class of the output stage; sets efficiency and partial-load law */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Current drawn, constant [A] */
            currentA?: number;
            /** @description Voltage at which its converter stops [V] */
            dropOutV?: number;
            /** @description Output over input at rated output, from the data sheet; beats the class [1] */
            efficiency?: number;
            /** @description Drawn on top of power over efficiency, where idle draw is stated apart [W] */
            extraPowerW?: number;
            /** @description Input current at rated output, from the data sheet; beats the class [A] */
            inputCurrentA?: number;
            /** @description Power drawn, constant [W] */
            inputPowerW?: number;
            /** @description Supply voltage of that input current; else ratedVoltageV [V] */
            inputVoltageV?: number;
            /** @description Load wired to it: one of the ratings, or above one, whose draw then bounds it [Ω] */
            loadOhm?: number;
            /** @description External fuse its maker states [A] */
            makerFuseA?: number;
            /** @description Name for the answer */
            name?: string;
            /** @description Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Continuous RMS output of all driven channels into the wired load; or give ratings and loadOhm [W] */
            powerW?: number;
            /** @description Draw at silence, switched on [W] */
            quiescentW?: number;
            /** @description What the power stands for; peak figures are refused */
            ratedAs?: components["schemas"]["RatedPower"];
            /** @description Supply voltage of the power rating [V] */
            ratedVoltageV?: number;
            /** @description Published outputs by load */
            ratings?: components["schemas"]["AmplifierLoadRating"][];
            /**
             * @description Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** @description Draw when switched off [A] */
            standbyA?: number;
            /** @description Largest conductor its terminal takes [mm²] */
            terminalAreaMm2?: number;
        };
        /** @description One amplifier, solved. */
        FeederAmplifierResult: {
            branch?: components["schemas"]["StageResult"];
            /** @description Current it draws [A] */
            currentA?: number;
            /** @description Its converter stops below this [V] */
            dropOutV: number;
            /** @description The same of nominal voltage [%] */
            dropPercent?: number;
            /** @description Start of the trunk less that: what the feeder costs [V] */
            dropV?: number;
            /** @description A steady state exists */
            feasible: boolean;
            /** @description Load over source voltage, for comparison [A] */
            firstGuessA: number;
            /** @description Power it takes [W] */
            inputPowerW?: number;
            /** @description Name from the request */
            name?: string;
            /** @description The voltage lies at or above that */
            runs: boolean;
            /** @description Lowest instant of the bass ripple without storage; absent where that instant collapses [V] */
            troughVoltageV?: number;
            /** @description Voltage at the amplifier [V] */
            voltageV?: number;
        };
        /** @description The cable of a stretch. */
        FeederCable: {
            /** @description Hottest surroundings along the run [°C] */
            ambientC?: number;
            /** @description Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** @description Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
            conductor?: components["schemas"]["Conductor"];
            /** @description Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series */
            designation: string;
            /** @description Series of the size; AWG, SAE and mm² are different sizes */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** @description Temperature class printed on the insulation [°C] */
            insulationC?: number;
            /** @description Where a metric copper size takes its resistance from */
            metricResistance?: components["schemas"]["MetricResistance"];
            /** @description Conductor length of the positive run [m] */
            positiveLengthM: number;
            /** @description Resistivity at 20 °C in place of the metal’s; metric sizes then use their nominal area [Ω·m] */
            resistivityOhmM?: number;
            /** @description The way back of this stretch; left out, it has none of its own */
            return?: components["schemas"]["ReturnPath"];
            /** @description Equal runs side by side, each with its own fuse */
            runs?: number;
            /** @description Spaces the run passes; the hottest gives the ambient when ambientC is left out */
            spaces?: components["schemas"]["RunSpace"][];
            /** @description Resistance of the stranded over the solid conductor [1] */
            strandingFactor?: number;
            /** @description Temperature coefficient at 20 °C in place of the metal’s [1/K] */
            temperatureCoefficientPerK?: number;
        };
        /** @description The fuse of a stretch, of each run. */
        FeederFuse: {
            /** @description Rating [A] */
            ratingA: number;
            /** @description Its resistance; else 0.09 V over its rating [Ω] */
            resistanceOhm?: number;
            /** @description Family */
            type?: components["schemas"]["FuseType"];
        };
        /** @description Fuses against cables. */
        FeederProtection: {
            /** @description Main over each fused branch */
            branches: components["schemas"]["BranchSelectivity"][];
            /** @description Every cable */
            cables: components["schemas"]["GuardedCable"][];
            /** @description Main fuse, all runs together [A] */
            mainRatingA?: number;
        };
        /** @description Source, trunk, distribution block, branches and amplifiers. */
        FeederRequest: {
            /** @description Amplifiers behind the block */
            amplifiers: components["schemas"]["FeederAmplifier"][];
            /** @description Holds every conductor at this temperature; else estimated from its current [°C] */
            conductorTemperatureC?: number;
            groundNoise?: components["schemas"]["GroundNoiseRequest"];
            /**
             * @description Load: test tone, dense bass (1/3) or ordinary music (1/8)
             * @enum {string}
             */
            level?: "full-sine" | "heavy" | "average";
            source: components["schemas"]["FeederSource"];
            /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
            systemVoltageV: number;
            /** @description From the source to the distribution block, or to the only amplifier */
            trunk?: components["schemas"]["FeederStage"];
        };
        /** @description The solved feeder. Without a steady state voltages and currents are absent. */
        FeederResult: {
            /** @description Amplifiers in the order of the request */
            amplifiers: components["schemas"]["FeederAmplifierResult"][];
            /** @description At the distribution block, the end of the trunk [V] */
            blockVoltageV?: number;
            /** @description Times the load at which the supply collapses; absent where it never does [1] */
            collapseMargin?: number;
            /** @description A steady state exists */
            feasible: boolean;
            groundNoise?: components["schemas"]["GroundNoise"];
            /** @description Heat in trunk and branches [W] */
            lossW?: number;
            /** @description Power drawn in all at that point, shares as asked [W] */
            maximumPowerW?: number;
            /**
             * @description `regulated`: the source carries all; `battery-assists`: beyond its limit; `boundary`: where both meet
             * @enum {string}
             */
            mode: "regulated" | "battery-assists" | "boundary";
            /** @description At the start of the trunk [V] */
            nodeVoltageV?: number;
            protection: components["schemas"]["FeederProtection"];
            /** @description Voltage behind the source’s resistance in this mode [V] */
            sourceVoltageV: number;
            /** @description Current in the trunk [A] */
            totalCurrentA?: number;
            trunk?: components["schemas"]["StageResult"];
        };
        /** @description What feeds the trunk. */
        FeederSource: {
            /** @description What the vehicle takes of it [A] */
            baseLoadA?: number;
            battery?: components["schemas"]["BatterySource"];
            /** @description Current the alternator or converter can give; beyond it the battery helps [A] */
            currentLimitA?: number;
            /** @description Between that voltage and the trunk [Ω] */
            resistanceOhm?: number;
            /** @description Regulated voltage, or open-circuit voltage of a battery [V] */
            voltageV: number;
        };
        /** @description One stretch of the loop, out and back. Everything described adds up. */
        FeederStage: {
            cable?: components["schemas"]["FeederCable"];
            fuse?: components["schemas"]["FeederFuse"];
            /** @description One of them [Ω] */
            jointOhm?: number;
            /** @description Lugs, rings and block contacts */
            joints?: number;
            /** @description Anything else in this stretch, or the whole of it [Ω] */
            resistanceOhm?: number;
            /** @description Without a fuse on purpose; else a cable is given one */
            unfused?: boolean;
        };
        /** @description A filter or equaliser before the amplifier. */
        Filter: components["schemas"]["HighPassFilter"] | components["schemas"]["LowPassFilter"] | components["schemas"]["LowShelfFilter"] | components["schemas"]["HighShelfFilter"] | components["schemas"]["PeakingFilter"];
        /** @description A corner of the band. */
        FilterCorner: {
            /** @description Corner frequency [Hz] */
            cornerHz: number;
            /** @description Order, 6 dB an octave each */
            order?: number;
        };
        /** @description A corner of the band and its reason. */
        FilterCornerSet: {
            /** @description Corner frequency [Hz] */
            cornerHz: number;
            /** @description Order, 6 dB an octave each */
            order: number;
            /** @description Why this corner */
            why: string;
        };
        /**
         * @description Family of a filter.
         * @enum {string}
         */
        FilterFamily: "butterworth" | "linkwitz-riley" | "bessel" | "chosen-q";
        /** @description A corner of a footprint seen from above. */
        FootprintCorner: {
            /** @description To the right [mm] */
            xMm: number;
            /** @description To the rear [mm] */
            yMm: number;
        };
        /** @description A figure the formula must give. */
        FormulaCheck: {
            /** @description Where the figure comes from */
            from: string;
            /** @description What it is fed with */
            given: components["schemas"]["FormulaGiven"][];
            /** @description In the digits that hold */
            gives: string;
        };
        /** @description A symbol with a value. */
        FormulaGiven: {
            /** @description As it stands in the text */
            symbol: string;
            /** @description In the unit of the symbol */
            value: number;
        };
        /** @description A formula that stands behind figures. */
        FormulaRow: {
            /** @description Figures it must give */
            checks: components["schemas"]["FormulaCheck"][];
            /** @description What it works out */
            gives: string;
            /** @description Id, as in `basis` of an answer */
            id: string;
            /** @description Id of the source */
            source: components["schemas"]["SourceId"];
            /** @description In the order of the inputs of a basis */
            symbols: components["schemas"]["FormulaSymbol"][];
            /** @description Plain arithmetic: + - * / ^ sqrt() log10() log() pi min() max() */
            text: string;
            /** @description SI unit of what it gives; temperatures in °C */
            unit: string;
            /** @description Where it holds */
            validity: string;
        };
        /** @description Formulas behind the figures */
        FormulasTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["FormulaRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description A symbol of a formula. */
        FormulaSymbol: {
            /** @description Lower end of the range over which text and code are compared */
            from: number;
            /** @description What it stands for */
            means: string;
            /** @description As it stands in the text */
            symbol: string;
            /** @description Upper end of that range */
            to: number;
            /** @description Its SI unit; temperatures in °C */
            unit: string;
        };
        /** @description What a cut sets free. */
        FreedPart: {
            /** @description Which of its copies */
            copy?: number;
            /**
             * @description A part to be cut further, a finished panel, or an offcut
             * @enum {string}
             */
            is: "part" | "panel" | "offcut";
            /** @description Size along the length of the sheet [mm] */
            lengthMm: number;
            /** @description Name of a finished panel */
            panel?: string;
            /** @description Number of a part to be cut further */
            part?: number;
            /** @description Size along the width of the sheet [mm] */
            widthMm: number;
        };
        /** @description Frequencies with equal ratios. */
        FrequencyRange: {
            /** @description First frequency [Hz] */
            fromHz: number;
            /** @description Number of frequencies */
            points: number;
            /** @description Last frequency [Hz] */
            toHz: number;
        };
        /** @description How a frequency scatters. */
        FrequencySpread: {
            /** @description Mean of the samples [Hz] */
            meanHz: number;
            /** @description With every part as printed [Hz] */
            nominalHz: number;
            /** @description At each percentile asked for, in its order */
            percentilesHz: number[];
            /** @description Standard deviation of the samples [Hz] */
            standardDeviationHz: number;
        };
        /** @description Between what the rating lies. */
        FuseBounds: {
            /** @description What the weakest protected cable allows [A] */
            highestA: number;
            /** @description Full-sine current [A] */
            loadA: number;
            /** @description The greater of the two [A] */
            lowestA: number;
            /** @description Least rating that carries dense bass in these surroundings [A] */
            thermalA: number;
        };
        /** @description A protected cable and what it allows. */
        FusedCable: {
            /** @description Current it may carry for good here [A] */
            ampacityA: number;
            /** @description Size with its series */
            designation: string;
            /** @description Largest fuse by the policy [A] */
            highestFuseA: number;
        };
        /** @description One family of fuse-links. */
        FuseFamilyRow: {
            /** @description Breaking capacity [A] */
            breakingA: number;
            /** @description What it looks like */
            form: string;
            /** @description Ratings [A], ascending */
            ratingsA: number[];
            /** @description Id of the source */
            source: components["schemas"]["SourceId"];
            /** @description Standard and type */
            standard: string;
            /** @description What of it was read and what recalled */
            status: string;
            /** @description Type, as in a result */
            type: components["schemas"]["FuseType"];
            /** @description Rated voltages made [V] */
            voltagesV: number[];
        };
        /** @description Where the fuse sits. */
        FusePlacement: {
            /** @description A fuse at each end: the cable links two sources */
            bothEnds: boolean;
            /** @description Aim: conductor between source and fuse [mm] */
            idealMm: number;
            /** @description Limit when that piece lies in a conduit all the way [mm] */
            sheathedMm: number;
            /** @description In words */
            text: string;
            /** @description Usual limit in cars [mm] */
            usualMm: number;
        };
        /**
         * @description How near to its ampacity a cable may be fused.
         * @enum {string}
         */
        FusePolicy: "strict" | "cfr-150";
        /** @description A load behind a cable that wants a fuse. */
        FuseRequest: {
            /** @description Further cables before the next fuse */
            alsoProtects?: components["schemas"]["ProtectedCable"][];
            /** @description Branch fuses behind this one, for selectivity */
            branchFusesA?: number[];
            cable: components["schemas"]["ProtectedCable"];
            /** @description Test tones or sustained notes: the fuse is held to the full sine for good */
            continuousTone?: boolean;
            /** @description Full-sine current of the load [A] */
            currentA: number;
            /** @description Planned length of conductor between source and fuse [mm] */
            distanceMm?: number;
            /** @description Surroundings of the fuse [°C] */
            fuseAmbientC?: number;
            /** @description Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
            heavyCurrentA?: number;
            /** @description The cable links two batteries */
            linksTwoBatteries?: boolean;
            /** @description Continuous load over fuse rating [1] */
            loadRatio?: number;
            /** @description External fuse the amplifier’s maker states [A] */
            makerFuseA?: number;
            /** @description Fuses on the amplifier itself */
            onboardFusesA?: number[];
            /** @description Overcurrent to give the operating times of [A] */
            overcurrentA?: number;
            /** @description `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
            policy?: components["schemas"]["FusePolicy"];
            /** @description That piece lies in a conduit or sheath all the way */
            sheathed?: boolean;
            source?: components["schemas"]["FuseSource"];
            /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
            systemVoltageV: number;
            /** @description Fuse families allowed */
            types?: components["schemas"]["FuseType"][];
        };
        /** @description The fuse and the reasons. */
        FuseResult: {
            bounds: components["schemas"]["FuseBounds"];
            /** @description Cables it protects, the first of the request first */
            cables: components["schemas"]["FusedCable"][];
            fuse: components["schemas"]["ChosenFuse"];
            /** @description Most that may flow into a dead short right behind the fuse: strongest battery, cold fuse, way to the fuse [A] */
            prospectiveA: number;
            /** @description Over each branch fuse */
            selectivity?: components["schemas"]["FuseSelectivity"][];
            timeCurrent?: components["schemas"]["FuseTimeBand"];
        };
        /** @description This fuse over a branch fuse. */
        FuseSelectivity: {
            /** @description Branch rating [A] */
            branchRatingA: number;
            /** @description Main over branch [1] */
            ratio: number;
            /** @description A fault behind the branch leaves the main fuse whole */
            selective: boolean;
        };
        /** @description Two fuses, the second fed by nothing but the first. */
        FuseSeries: {
            /** @description The fuse nearer to the source */
            before: string;
            /** @description The fuse behind it */
            behind: string;
            /** @description Rating of the first over that of the second [1] */
            ratio: number;
        };
        /** @description The battery behind the fuse and the way to it. */
        FuseSource: {
            /** @description Capacity of the bank at 20 h [A·h] */
            capacityAh?: number;
            /** @description Kind of battery; with capacityAh in place of the cold cranking current */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** @description Cold cranking current, from which both ends of the resistance follow [A] */
            coldCrankingA?: number;
            /** @description Everything between battery and fuse, out and back: for a fuse at a distribution block [Ω] */
            leadOhm?: number;
            /** @description Open-circuit voltage of the battery [V] */
            openCircuitV?: number;
            /** @description Internal resistance of the battery [Ω] */
            resistanceOhm?: number;
        };
        /** @description Fuse-links for road vehicles by family */
        FusesTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["FuseFamilyRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description Operating times at an overcurrent. */
        FuseTimeBand: {
            /** @description Opens no later; absent where it may never open [s] */
            maximumS?: number;
            /** @description Opens no sooner; absent where not given [s] */
            minimumS?: number;
            /** @description Overcurrent over rating [%] */
            percent: number;
        };
        /**
         * @description Type of a fuse; /v1/reference/fuses describes each.
         * @enum {string}
         */
        FuseType: "F" | "C" | "E" | "SF30" | "SF51" | "single-bolt";
        /** @description What the meter shall read. */
        GainSetting: {
            /** @description Room left for a boost [dB] */
            boostDb: number;
            /** @description Load each channel of a bridged pair sees [Ω] */
            channelLoadOhm?: number;
            /** @description Reading from each terminal of a bridged pair to ground [V] */
            channelMeterVoltageV?: number;
            /** @description Voltage of each channel of a bridged pair [V] */
            channelVoltageV?: number;
            /** @description RMS current at full level [A] */
            currentA: number;
            /** @description What the filters take from the tone if they cannot be switched off, as Butterworth [dB] */
            filterLossDb: number;
            /**
             * @description What ends first; `asked`: the gain was wanted for less
             * @enum {string}
             */
            limitedBy?: "amplifier" | "drivers" | "asked";
            /** @description Load [Ω] */
            loadOhm: number;
            /** @description Reading at the amplifier's terminals, filters off [V] */
            meterVoltageV: number;
            /** @description Reading with those filters on [V] */
            meterVoltageWithFiltersV: number;
            /** @description Power into the load at full level [W] */
            powerW: number;
            /** @description Allowance for quiet recordings: how far loud ones pass the target [dB] */
            quietRecordingDb: number;
            /** @description RMS voltage at the amplifier's terminals at full level [V] */
            targetVoltageV: number;
            /** @description Frequency of the test tone [Hz] */
            toneHz: number;
            /** @description Level of the test tone against full scale [dB] */
            toneLevelDb: number;
            /** @description Voltage gain from the input to the target [dB] */
            voltageGainDb?: number;
        };
        /**
         * @description Series of cable sizes.
         * @enum {string}
         */
        GaugeSystem: "awg" | "sae" | "mm2";
        /** @description Volumes the caller knows; each replaces the computed one. */
        GivenDisplacement: {
            /** @description Amplifier, instead of what would be computed [L] */
            amplifierL?: number;
            /** @description All braces, instead of what would be computed [L] */
            bracesL?: number;
            /** @description All drivers, instead of what would be computed [L] */
            driversL?: number;
            /** @description Lining, instead of what would be computed [L] */
            liningL?: number;
            /** @description Anything else, instead of what would be computed [L] */
            otherL?: number;
            /** @description All ports with their walls, instead of what would be computed [L] */
            portsL?: number;
            /** @description Terminal cup, instead of what would be computed [L] */
            terminalL?: number;
        };
        /** @description The way back, and what its test should read. */
        GroundAdvice: {
            /** @description Resistance that is just accepted [mΩ] */
            acceptanceMohm?: number;
            /** @description Size of ground lead, return cable and body strap */
            designation?: string;
            /** @description Return conductor, its two lugs and the body; absent without a cable [mΩ] */
            expectedMohm?: number;
            /** @description With a test tone */
            fullSine?: components["schemas"]["GroundReading"];
            /** @description With dense bass music, 1/3 of rated output */
            heavy?: components["schemas"]["GroundReading"];
            /**
             * @description Return
             * @enum {string}
             */
            kind: "cable" | "chassis";
            /** @description Longest ground lead [m] */
            leadAtMostM: number;
            /** @description In words */
            text: string;
        };
        /** @description Ripple in the shared ground. */
        GroundNoise: {
            /** @description Against the signal [dB] */
            levelDb: number;
            /** @description Over the shared resistance [mV] */
            noiseMv: number;
        };
        /** @description A resistance that supply and signal ground share. */
        GroundNoiseRequest: {
            /** @description Ripple current; else the whole current, as without storage [A] */
            rippleA?: number;
            /** @description Shared resistance [Ω] */
            sharedOhm: number;
            /** @description Signal at full level [V] */
            signalV: number;
        };
        /** @description The ground test at one current. */
        GroundReading: {
            /** @description Most that is accepted: 30 % over the design with the conductor hot [mV] */
            acceptanceMv: number;
            /** @description Current [A] */
            currentA: number;
            /** @description Expected between the ground terminal and the battery’s negative post, conductor cold [mV] */
            expectedMv: number;
        };
        /** @description A cable and the fuse before it. */
        GuardedCable: {
            /** @description Current one run may carry for good here [A] */
            ampacityA?: number;
            /** @description Size with its series */
            designation: string;
            /** @description Its own fuse, or for an unfused branch the main one [A] */
            fuseRatingA?: number;
            /** @description The fuse is at most the ampacity */
            guarded: boolean;
            /** @description `trunk`, or the index of the amplifier whose branch it is */
            stretch: string;
        };
        /** @description Passes what lies above its corner. */
        HighPassFilter: {
            /** @description Corner frequency [Hz] */
            cornerHz: number;
            /** @description `butterworth` and `bessel`: half power (−3.01 dB) at the corner. `linkwitz-riley`: −6.02 dB there, even orders. `chosen-q`: order 2 with the given Q */
            family: components["schemas"]["FilterFamily"];
            /**
             * @description Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "high-pass";
            /** @description Order: 6 dB an octave each */
            order: number;
            /** @description Q of the pole pair, only with the family `chosen-q` [1] */
            q?: number;
        };
        /** @description A Butterworth high-pass that holds the cone. */
        HighPassProtection: {
            /** @description Lowest corner that holds the cone within Xmax; a higher one does too [Hz] */
            cornerHz: number;
            /** @description What it takes at `belowHz`; negative [dB] */
            gainAtTuningDb: number;
            /** @description Order */
            order: number;
        };
        /** @description Raises or lowers what lies above its corner. */
        HighShelfFilter: {
            /** @description Frequency at which half of the gain in dB is reached [Hz] */
            cornerHz: number;
            /** @description Gain of the shelf; negative cuts [dB] */
            gainDb: number;
            /**
             * @description Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "high-shelf";
            /** @description Steepness; 0.7071, the steepest without overshoot, when absent [1] */
            q?: number;
        };
        /** @description A peak or dip of the impedance. */
        ImpedanceExtreme: {
            /** @description Where it lies [Hz] */
            frequencyHz: number;
            /** @description Modulus there [Ω] */
            ohm: number;
        };
        /**
         * @description How inches are written.
         * @enum {string}
         */
        InchStyle: "decimal" | "sixteenths";
        /** @description The back wave goes to another space and is not heard. */
        InfiniteBaffle: {
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "infinite-baffle";
        };
        /** @description An amplifier in the air of the box. */
        InsideAmplifier: {
            /** @description Behind the inner face of its panel [mm] */
            depthMm: number;
            /** @description Height [mm] */
            heightMm: number;
            /** @description Mass [kg] */
            massKg?: number;
            /** @description Width [mm] */
            widthMm: number;
        };
        /**
         * @description Insulation of a cable.
         * @enum {string}
         */
        InsulationMaterial: "pvc" | "cross-linked-pvc" | "xlpe" | "epr" | "rubber" | "silicone";
        /** @description Drivers in pairs around a small chamber; both of a pair are driven alike. */
        IsobaricPairs: {
            /**
             * @description How the outer and the inner drivers are joined
             * @enum {string}
             */
            connection?: "parallel" | "series";
            /** @description Volume between the two cones of all pairs together [L] */
            couplingVolumeL: number;
        };
        /** @description How the panels meet. */
        Joints: {
            /**
             * @description Butt joints, or mitres round the profile
             * @enum {string}
             */
            corners?: "butt" | "mitre";
            /**
             * @description Sides (of a prism: lid and floor) between the walls, or over their ends
             * @enum {string}
             */
            sides?: "between" | "over";
        };
        /** @description A block on the floor of the boot, whose floor is as wide and deep as the limits. */
        KeepOut: {
            /** @description Depth [mm] */
            depthMm: number;
            /** @description Height [mm] */
            heightMm: number;
            /** @description Width [mm] */
            widthMm: number;
            /** @description Left edge, from the left wall [mm] */
            xMm: number;
            /** @description Near edge, from the seat or sill the box is pushed against [mm] */
            yMm: number;
            /** @description Underside, above the floor [mm] */
            zMm: number;
        };
        /** @description A panel where it lies on its sheet. */
        LaidPiece: {
            /** @description Which of its copies, from 1 */
            copy: number;
            /** @description Size along the length of the sheet [mm] */
            lengthMm: number;
            /** @description Name of the panel */
            panel: string;
            /** @description True when the panel's own length runs along the width of the sheet */
            turned: boolean;
            /** @description Size along the width of the sheet [mm] */
            widthMm: number;
            /** @description From the corner of the raw sheet along its length [mm] */
            xMm: number;
            /** @description From the corner of the raw sheet along its width [mm] */
            yMm: number;
        };
        /** @description The system at work. */
        LargeSignal: {
            atDrive: components["schemas"]["DrivePeaks"];
            heating?: components["schemas"]["CoilHeating"];
            programme: components["schemas"]["ProgrammeLimit"];
            protection?: components["schemas"]["ExcursionProtection"];
            /** @description Which limit governs where, over the frequencies asked for */
            segments: components["schemas"]["LimitSegment"][];
        };
        /** @description The largest usual driver for which the space holds a box. */
        LargestDriver: {
            /** @description Flange as it usually is [mm] */
            flangeDiameterMm: number;
            /** @description Mounting depth as it usually is [mm] */
            mountingDepthMm: number;
            /** @description Nominal size [mm] */
            nominalMm: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        LayOutBoxAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["BoxLayoutResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/boxes/panels gives. */
        LayOutBoxDone: {
            answer: components["schemas"]["LayOutBoxAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["BoxRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/boxes/panels gives, or why not. */
        LayOutBoxPart: components["schemas"]["LayOutBoxDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /**
         * @description What ends the level.
         * @enum {string}
         */
        LimitName: "cone-excursion" | "passive-radiator-excursion" | "coil-heat" | "rated-voltage" | "amplifier-voltage" | "amplifier-current" | "port-air-speed";
        /** @description A figure beside its limit. */
        LimitReading: {
            /** @description The limit, in `unit` [1] */
            bound: number;
            /** @description What is left up to the limit, in `unit` [1] */
            left: number;
            /**
             * @description Which limit
             * @enum {string}
             */
            limit: "price" | "full-sine-current" | "average-current" | "box-size" | "mass" | "reach" | "level" | "excursion" | "air-speed";
            /** @description Unit of both; `1` for a pure number or a price */
            unit: string;
            /** @description The figure, in `unit` [1] */
            value: number;
        };
        /** @description What the system must not exceed, beside `xmaxMm` and `powerW` of the driver. May be empty. */
        Limits: {
            /** @description Air speed in any port, peak [m/s] */
            airSpeedMPerS?: number;
            /** @description What the amplifier gives at most, RMS [A] */
            amplifierCurrentA?: number;
            /** @description Load at which that power is meant [Ω] */
            amplifierLoadOhm?: number;
            /** @description In place of its voltage: its power into `amplifierLoadOhm` [W] */
            amplifierPowerW?: number;
            /** @description What the amplifier gives at most, RMS [V] */
            amplifierVoltageV?: number;
            /** @description Mean power over that of a full sine [1] */
            dutyFactor?: number;
            heating?: components["schemas"]["CoilHeatingRequest"];
            /** @description Travel of a passive radiator, one way, peak [mm] */
            passiveRadiatorXmaxMm?: number;
            /** @description K of the jets at both ends of a port together: about 1.5 sharp, 0.2 to 0.5 flared [1] */
            portLossFactor?: number;
            /** @description Lowest frequency of what is played [Hz] */
            programmeFromHz?: number;
            /** @description Highest frequency of what is played [Hz] */
            programmeToHz?: number;
            /** @description Rated impedance of the drivers as they are joined [Ω] */
            ratedOhm?: number;
            /**
             * @description How `powerW` of the driver is read. `coil-heat`: |i|²·Re. `rated-voltage`: U²/ratedOhm. `lower`: whichever allows less
             * @enum {string}
             */
            thermalReading?: "lower" | "coil-heat" | "rated-voltage";
        };
        /** @description A stretch of the frequencies over which one limit governs. */
        LimitSegment: {
            /** @description First frequency [Hz] */
            fromHz: number;
            /** @description Excursion of a cone or passive radiator, heat in the coil, voltage by the rating, voltage or current of the amplifier, air speed */
            limit: components["schemas"]["LimitName"];
            /** @description Last frequency [Hz] */
            toHz: number;
        };
        /** @description A line output. */
        LineLevelSource: {
            /** @description Whether plus and minus both carry signal */
            differential?: boolean;
            /** @description The source is the vehicle's own and may equalise, delay and roll off */
            factory?: boolean;
            /**
             * @description Kind of source (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "line-level";
            /** @description Highest undistorted RMS output [V] */
            levelV: number;
            /** @description Output resistance [Ω] */
            outputOhm?: number;
        };
        /** @description Absorbent pads on the inner faces. */
        Lining: {
            /** @description Covered area; all faces but the front when absent [m²] */
            areaM2?: number;
            /** @description Density of the pad [kg/m³] */
            densityKgPerM3: number;
            /**
             * @description What it is made of; `dense` counts in full
             * @enum {string}
             */
            fibre: "polyester" | "wool" | "glass" | "dense";
            /** @description Thickness of the pad [mm] */
            thicknessMm: number;
        };
        /** @description Passes what lies below its corner. */
        LowPassFilter: {
            /** @description Corner frequency [Hz] */
            cornerHz: number;
            /** @description `butterworth` and `bessel`: half power (−3.01 dB) at the corner. `linkwitz-riley`: −6.02 dB there, even orders. `chosen-q`: order 2 with the given Q */
            family: components["schemas"]["FilterFamily"];
            /**
             * @description Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "low-pass";
            /** @description Order: 6 dB an octave each */
            order: number;
            /** @description Q of the pole pair, only with the family `chosen-q` [1] */
            q?: number;
        };
        /** @description Raises or lowers what lies below its corner. */
        LowShelfFilter: {
            /** @description Frequency at which half of the gain in dB is reached [Hz] */
            cornerHz: number;
            /** @description Gain of the shelf; negative cuts [dB] */
            gainDb: number;
            /**
             * @description Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "low-shelf";
            /** @description Steepness; 0.7071, the steepest without overshoot, when absent [1] */
            q?: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        MatchAmplifierAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["AmplifierMatchResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/amplifiers/matching gives. */
        MatchAmplifierDone: {
            answer: components["schemas"]["MatchAmplifierAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["AmplifierMatchRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/amplifiers/matching gives, or why not. */
        MatchAmplifierPart: components["schemas"]["MatchAmplifierDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description One of the drivers, all alike. */
        MatchDriver: {
            /** @description Rated impedance of one coil [Ω] */
            coilOhm: number;
            /** @description Voice coils */
            coils: number;
            /** @description Continuous RMS power it takes, all its coils together [W] */
            powerW: number;
            /** @description What kind of figure powerW is; only `rms` can be matched */
            ratingKind?: components["schemas"]["RatingKind"];
        };
        /** @description The voltage an output shall give, and what the meter shall read. */
        MatchGain: {
            /** @description Load each channel of a bridged pair sees [Ω] */
            channelLoadOhm?: number;
            /** @description Reading from each terminal of a bridged pair to ground [V] */
            channelMeterVoltageV?: number;
            /** @description Voltage of each channel of a bridged pair [V] */
            channelVoltageV?: number;
            /** @description RMS current at full level [A] */
            currentA: number;
            /**
             * @description What ends first; `asked`: the gain was wanted for less
             * @enum {string}
             */
            limitedBy?: "amplifier" | "drivers" | "asked";
            /** @description Load [Ω] */
            loadOhm: number;
            /** @description Reading at the amplifier's terminals, filters off [V] */
            meterVoltageV: number;
            /** @description Power into the load at full level [W] */
            powerW: number;
            /** @description Allowance for quiet recordings: how far loud ones pass the target [dB] */
            quietRecordingDb: number;
            /** @description RMS voltage at the amplifier's terminals at full level [V] */
            targetVoltageV: number;
            /** @description Level of the test tone against full scale [dB] */
            toneLevelDb: number;
        };
        /** @description One balanced way of putting the drivers on the amplifier. */
        MatchOption: {
            /** @description What follows from it */
            advice: string;
            /** @description Which amplifier */
            amplifier: string;
            /** @description Amplifiers of this kind needed */
            amplifiersNeeded: number;
            /** @description Whether each output is a bridged pair of channels */
            bridged: boolean;
            /** @description What the sheet claims, where the fuses on board pass less [W] */
            claimedPowerW?: number;
            /** @description Power offered to each coil [W] */
            coilPowerW?: number;
            /** @description Power offered to each driver [W] */
            driverPowerW?: number;
            /** @description Drivers on each output */
            driversPerOutput: number;
            /** @description Area of the amplifiers needed [cm²] */
            footprintCm2?: number;
            /** @description How the coils on one output are joined */
            join: string;
            /** @description Load on each output [Ω] */
            loadOhm: number;
            /** @description Lowest load this output may drive [Ω] */
            lowestOhm: number;
            /** @description Continuous power of one output into this load; absent when nothing follows from the sheet [W] */
            outputPowerW?: number;
            /** @description Outputs in use, each with an equal share of the drivers */
            outputs: number;
            /**
             * @description `published` for this load; `two-channels`: twice one channel at half the load; `voltage-bound`: at least this, by the voltage reached at the lower load `ratedOhm`
             * @enum {string}
             */
            powerFrom?: "published" | "two-channels" | "voltage-bound";
            /** @description Power offered over the driver's rating [1] */
            powerRatio?: number;
            /** @description Price of the amplifiers needed [1] */
            price?: number;
            /** @description Load of the rating a bound comes from [Ω] */
            ratedOhm?: number;
            /** @description Power of that rating: size the supply for it [W] */
            ratedPowerW?: number;
            /** @description Power of all outputs in use [W] */
            totalPowerW?: number;
            /**
             * @description `good`: 0.75 to 1.5 times the drivers; `power-unknown`: nothing published for this load or an allowed one below; `below-minimum`: must not be wired
             * @enum {string}
             */
            verdict: "good" | "under-powered" | "over-powered" | "power-unknown" | "below-minimum";
        };
        /** @description How to join the drivers of one output. */
        MatchWiring: {
            /** @description Every joint, the two of the amplifier first */
            joints: components["schemas"]["CoilJoint"][];
            /** @description The work in its order, ending with the checks */
            steps: string[];
        };
        /** @description One board. */
        MaterialRow: {
            /** @description Whether it has a grain to mind when cutting */
            grained: boolean;
            /** @description Id, as in a request */
            id: components["schemas"]["BoardId"];
            /** @description How far the figures hold */
            note: string;
            /** @description Usual sheet sizes */
            sheets: components["schemas"]["BoardSheet"][];
            /** @description Id of the source */
            source: components["schemas"]["SourceId"];
            /** @description Thicknesses, ascending */
            thicknesses: components["schemas"]["BoardThickness"][];
            /** @description Name */
            title: string;
        };
        /** @description Boards for boxes */
        MaterialsTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["MaterialRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What a microphone at the seat found, against half space at 1 m. */
        MeasuredTransfer: {
            /** @description Frequencies, rising */
            frequencyHz: number[];
            /** @description Level at the seat over the level in half space at 1 m, one for each frequency */
            gainDb: number[];
        };
        /** @description The figure, or the two that changed places, as it would be if the slip had happened; never applied. */
        MendedParameter: {
            /** @description Bl [T·m] */
            blTm?: number;
            /** @description Cms [mm/N] */
            cmsMmPerN?: number;
            /** @description fs [Hz] */
            fsHz?: number;
            /** @description Le [mH] */
            leMh?: number;
            /** @description Mms [g] */
            mmsG?: number;
            /** @description Qes [1] */
            qes?: number;
            /** @description Qms [1] */
            qms?: number;
            /** @description Qts [1] */
            qts?: number;
            /** @description Re [Ω] */
            reOhm?: number;
            /** @description Rms [kg/s] */
            rmsKgPerS?: number;
            /** @description Sd [cm²] */
            sdCm2?: number;
            /** @description Vas [L] */
            vasL?: number;
            /** @description Xmax [mm] */
            xmaxMm?: number;
        };
        /**
         * @description Where the resistance of a metric cable comes from.
         * @enum {string}
         */
        MetricResistance: "iec-60228-class-5" | "iso-6722-1" | "nominal-area";
        /** @description One thing of the model, where it stands in the box. */
        ModelBody: {
            /** @description The corner across */
            highest: components["schemas"]["BoxPoint"];
            /**
             * @description What it is
             * @enum {string}
             */
            kind: "board" | "driver" | "tube" | "cup" | "amplifier";
            /** @description Corner of the block round it that lies left, in front and low */
            lowest: components["schemas"]["BoxPoint"];
            /** @description Name, as in the cut list or on the clearances; that of its node in the model */
            name: string;
            /** @description What it fills as it is shown: a board less its holes, a tube without its bore [L] */
            volumeL: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        ModelBoxAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["BoxModel"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description Figures of one operation that a version moved beyond rounding. */
        MovedFigures: {
            /** @description JSON pointers into its result; `-` stands for every entry of a list */
            figures: string[];
            /** @description Which calculation */
            operationId: string;
            /** @description What moved, how far and why */
            text: string;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        NestPanelsAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["SheetPlanResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/boxes/sheets gives. */
        NestPanelsDone: {
            answer: components["schemas"]["NestPanelsAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["SheetPlanRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/boxes/sheets gives, or why not. */
        NestPanelsPart: components["schemas"]["NestPanelsDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description The curves with every part as printed. */
        NominalCurves: {
            /** @description Excursion of one cone, one way, peak */
            coneExcursionMm: number[];
            /** @description Modulus of the impedance */
            impedanceOhm: number[];
            /** @description Level re 20 µPa at 1 m in half space */
            levelDb: number[];
        };
        /** @description A chamber with either ports or passive radiators. */
        OpenChamber: {
            /** @description Q of the absorption at the frequency of the chamber; absent: none [1] */
            absorptionQ?: number;
            /** @description Q of the leak to the outside at the frequency of the chamber; absent: tight [1] */
            leakQ?: number;
            /** @description Acoustic volume for all drivers together [L] */
            netVolumeL: number;
            passiveRadiators?: components["schemas"]["PassiveRadiators"];
            port?: components["schemas"]["Port"];
        };
        /** @description A part as it leaves the saw. Its frame lies on the outer face: origin at the lower left corner of the blank, u to the right, v up, seen from outside. */
        Panel: {
            /** @description Each of them in its place */
            copies?: components["schemas"]["PanelCopy"][];
            /** @description Holes and rebates */
            cutOuts: components["schemas"]["CutOut"][];
            /** @description Edges that need more than a square cut, or that may be rounded */
            edges: components["schemas"]["PanelEdge"][];
            /** @description Direction of the face grain on the sheet */
            grain: components["schemas"]["PanelGrain"];
            /**
             * @description Direction of the larger side in the frame
             * @enum {string}
             */
            lengthAlong: "u" | "v";
            /** @description Larger side of the blank [mm] */
            lengthMm: number;
            /** @description One part, cut-outs taken off [kg] */
            massKg: number;
            /** @description Board, as in the table of materials */
            material: components["schemas"]["BoardId"];
            /** @description Name of the part */
            name: string;
            /** @description Corners of the blank, anticlockwise */
            outline: components["schemas"]["PanelPoint"][];
            /** @description Of the first of them */
            place?: components["schemas"]["PanelPlace"];
            /** @description How many alike */
            quantity: number;
            /**
             * @description What it does
             * @enum {string}
             */
            role: "top" | "bottom" | "front" | "back" | "side" | "wall" | "divider" | "port-wall" | "brace" | "baffle-ring";
            /** @description Board [mm] */
            thicknessMm: number;
            /** @description Smaller side of the blank [mm] */
            widthMm: number;
        };
        /** @description Bending of the panel, or of one span when braced. */
        PanelBending: {
            /** @description Edges held from turning */
            clamped: components["schemas"]["PanelBendingFigures"];
            /** @description Edges free to turn */
            supported: components["schemas"]["PanelBendingFigures"];
        };
        /** @description Bending under the pressure given. */
        PanelBendingFigures: {
            /** @description Volume it moves by [L] */
            displacedL: number;
            /** @description In the middle [mm] */
            largestMm: number;
            /** @description Mean over the area [mm] */
            meanMm: number;
        };
        /** @description One of equal parts, in its place. */
        PanelCopy: {
            /** @description What stands against it */
            marks: components["schemas"]["PanelMark"][];
            /** @description As the order of assembly and the model name it */
            name: string;
            place: components["schemas"]["PanelPlace"];
        };
        /** @description An edge that is not simply sawn square and left sharp. */
        PanelEdge: {
            /** @description Edge from this point of the outline to the next */
            edge: number;
            /**
             * @description The face on which the part is longer at this edge
             * @enum {string}
             */
            longFace: "outer" | "inner" | "equal";
            /** @description The outer arris may be rounded to this radius after assembly, of the outermost board where several lie on one another; edges without it stay sharp [mm] */
            roundingRadiusMm?: number;
            /** @description Tilt of the saw from a square cut [°] */
            tiltDeg: number;
        };
        /** @description The panel of a glued box lies between the two. */
        PanelFrequencies: {
            /** @description Edges held from turning [Hz] */
            clampedHz: number;
            /** @description Edges free to turn [Hz] */
            supportedHz: number;
        };
        /**
         * @description Which way the grain of a panel runs.
         * @enum {string}
         */
        PanelGrain: "length" | "width" | "any";
        /** @description A strip of a face on which the edge of another part stands, by its middle line; to be marked before assembly. */
        PanelMark: {
            /**
             * @description On which face of this part
             * @enum {string}
             */
            face: "outer" | "inner";
            /** @description One end of the middle line, in the frame of the outer face */
            from: components["schemas"]["PanelPoint"];
            /** @description What stands there */
            part: string;
            /** @description Where screws go in from outside until the glue has set; none where it is glued only */
            screws: components["schemas"]["PanelPoint"][];
            /** @description The other end */
            to: components["schemas"]["PanelPoint"];
            /** @description Across the strip: board of what stands there [mm] */
            widthMm: number;
        };
        /** @description Where the frame of a part lies in the box. */
        PanelPlace: {
            origin: components["schemas"]["BoxPoint"];
            uAxis: components["schemas"]["BoxDirection"];
            vAxis: components["schemas"]["BoxDirection"];
        };
        /** @description A point on the outer face of a part. */
        PanelPoint: {
            /** @description To the right of the lower left corner [mm] */
            uMm: number;
            /** @description Above the lower left corner [mm] */
            vMm: number;
        };
        /** @description Bending stiffness per metre. */
        PanelRigidity: {
            /** @description Along the width [N·m] */
            acrossNm: number;
            /** @description Along the length [N·m] */
            alongNm: number;
            /** @description Of twist, with the coupling of the two [N·m] */
            twistNm: number;
        };
        /** @description Equal parts that braces divide a panel into. */
        PanelSpans: {
            /** @description Parts of the length */
            ofLength?: number;
            /** @description Parts of the width */
            ofWidth?: number;
        };
        /** @description One flat panel held along its four edges. */
        PanelVibrationRequest: {
            board?: components["schemas"]["Board"];
            driver?: components["schemas"]["DriverOnPanel"];
            /** @description Boards glued face to face */
            layers?: number;
            /** @description Free between its edges, along the face grain [mm] */
            lengthMm: number;
            /** @description Even pressure inside, peak [Pa] */
            pressurePa?: number;
            spans?: components["schemas"]["PanelSpans"];
            /** @description One board [mm] */
            thicknessMm: number;
            /** @description Top of the band the box plays [Hz] */
            upperHz?: number;
            /** @description Free between its edges, across the face grain [mm] */
            widthMm: number;
        };
        /** @description Where the panel rings and how far it bends. */
        PanelVibrationResult: {
            bending?: components["schemas"]["PanelBending"];
            /** @description One of the spans given */
            braced?: components["schemas"]["PanelFrequencies"];
            /** @description The longer side halved by a stiff brace */
            halved: components["schemas"]["PanelFrequencies"];
            /** @description Mass of the board [kg/m²] */
            massPerAreaKgPerM2: number;
            /** @description Whether it does, with edges free to turn */
            passes: boolean;
            /** @description Without a brace */
            plain: components["schemas"]["PanelFrequencies"];
            rigidity: components["schemas"]["PanelRigidity"];
            /** @description Equal parts of the longer side from which it passes; 20 stands for 20 or more */
            spansToPass: number;
            /** @description What keeps it out of the band [Hz] */
            wantedHz: number;
            /** @description Without a brace, edges free to turn, with the driver [Hz] */
            withDriverHz?: number;
        };
        /**
         * @description Units on paper.
         * @enum {string}
         */
        PaperUnits: "metric" | "imperial";
        /** @description Equal runs side by side where no single size fits. */
        ParallelRuns: {
            /** @description What each may carry [A] */
            ampacityA: number;
            /** @description Current of each [A] */
            currentA: number;
            /** @description Size of each */
            designation: string;
            /** @description Drop [V] */
            dropV: number;
            /** @description Fuse of each, at the source [A] */
            fuseRatingA: number;
            /** @description How many */
            runs: number;
        };
        /** @description A relation that the sheet over-determines, held against it. */
        ParameterCheck: {
            /** @description Both values and what they were reached from */
            detail: string;
            /**
             * @description Which relation
             * @enum {string}
             */
            identity: "total-q" | "compliance-volume" | "resonance" | "electrical-q" | "mechanical-q";
            /** @description Value on the sheet over the value the others give [1] */
            ratio: number;
            /** @description The relation as printed in the literature */
            relation: string;
            /**
             * @description Beyond what the rounding of the printed digits explains: `agrees` up to 3 %, `note` up to 10 %, `care` up to 25 %, else `stop`
             * @enum {string}
             */
            verdict: "agrees" | "note" | "care" | "stop";
        };
        /** @description Where a value comes from. */
        ParameterOrigin: {
            /**
             * @description `given` by the sheet, `derived` from it, or `assumed`
             * @enum {string}
             */
            origin: "given" | "derived" | "assumed";
            /** @description Formula or reason of a derived or assumed value */
            rule?: string;
        };
        /** @description Where each value of the set comes from. */
        ParameterOrigins: {
            blTm: components["schemas"]["ParameterOrigin"];
            cmsMmPerN: components["schemas"]["ParameterOrigin"];
            fsHz: components["schemas"]["ParameterOrigin"];
            mmsG: components["schemas"]["ParameterOrigin"];
            qes: components["schemas"]["ParameterOrigin"];
            qms: components["schemas"]["ParameterOrigin"];
            qts: components["schemas"]["ParameterOrigin"];
            reOhm: components["schemas"]["ParameterOrigin"];
            rmsKgPerS: components["schemas"]["ParameterOrigin"];
            sdCm2: components["schemas"]["ParameterOrigin"];
            vasL: components["schemas"]["ParameterOrigin"];
        };
        /** @description A part of the circuit. */
        PartCurrent: {
            /** @description Through it that way; of a battery or alternator what it gives [A] */
            currentA: number;
            /** @description Its name */
            id: string;
            /** @description From its first point, or plus, to its second [V] */
            voltageV: number;
        };
        /** @description A named part of the enclosure with its curve. */
        PartCurve: {
            /** @description Ports: air speed, peak */
            airSpeedMPerS?: number[];
            /** @description Drivers and passive radiators: excursion of one, one way, peak */
            excursionMm?: number[];
            /** @description Name in the request; of isobaric pairs `outer`, `inner` and `coupling` */
            name: string;
            /**
             * @description What it is
             * @enum {string}
             */
            part: "chamber" | "port" | "passive-radiator" | "drivers";
            /** @description Chambers: sound pressure, RMS */
            pressurePa?: number[];
        };
        /** @description One chamber behind the cone with passive radiators. */
        PassiveRadiatorBox: {
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "passive-radiator";
            rear: components["schemas"]["RadiatorChamber"];
        };
        /** @description Equal passive radiators of one chamber. */
        PassiveRadiators: {
            /** @description Effective area of one radiator [cm²] */
            areaCm2: number;
            /** @description Compliance of one radiator [mm/N] */
            complianceMmPerN: number;
            /** @description Number of equal radiators */
            count?: number;
            /** @description Moving mass of one radiator with air load and added weight [g] */
            massG: number;
            /** @description Mechanical Q of one radiator alone in free air; absent: no loss [1] */
            qm?: number;
        };
        /** @description Raises or lowers a band around its centre. */
        PeakingFilter: {
            /** @description Centre frequency [Hz] */
            centreHz: number;
            /** @description Gain at the centre; negative cuts [dB] */
            gainDb: number;
            /**
             * @description Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "peaking";
            /** @description Q: centre over the bandwidth at half the gain in dB [1] */
            q: number;
        };
        /** @description A centre on the outer face of a panel, in its own frame. */
        PlaceOnPanel: {
            /** @description To the right of the lower left corner [mm] */
            uMm: number;
            /** @description Above the lower left corner [mm] */
            vMm: number;
        };
        /** @description Another box for the same drivers and space. */
        PlanAlternative: {
            figures: components["schemas"]["SystemFigures"];
            /** @description What it does better than the planned box */
            gains: string[];
            /** @description What it does worse */
            givesUp: string[];
            /** @description The wish it is best for */
            goal: components["schemas"]["DesignGoal"];
            /** @description The request with this patch plans it, to the last digit */
            patch: components["schemas"]["BoxPatch"];
        };
        /** @description The amplifier for the bass, as its data sheet says. */
        PlanAmplifier: {
            /** @description Channels */
            channels?: number;
            /** @description Class of the output stage; sets efficiency and partial-load law */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Read where the amplifier itself is silent; a figure that contradicts it is refused */
            draw?: components["schemas"]["AmplifierDraw"];
            /** @description Output over input at rated output, from the data sheet; beats the class [1] */
            efficiency?: number;
            /** @description Area it takes where it is mounted [cm²] */
            footprintCm2?: number;
            /** @description Input current at rated output, from the data sheet; beats the class [A] */
            inputCurrentA?: number;
            /** @description Supply voltage of that input current; else ratedVoltageV [V] */
            inputVoltageV?: number;
            /** @description Lowest load of a bridged pair [Ω] */
            minimumBridgedOhm?: number;
            /** @description Lowest load of one channel [Ω] */
            minimumOhm: number;
            /** @description Name by which the answer speaks of it */
            name?: string;
            /** @description Fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Price, in any one currency [1] */
            price?: number;
            /** @description Idle draw [W] */
            quiescentW?: number;
            /** @description Supply at which the powers are rated, for what the fuses pass [V] */
            ratedVoltageV?: number;
            /** @description What kind of figure each rating is; only `rms` can be matched */
            ratingKind?: components["schemas"]["RatingKind"];
            /** @description Published powers, one a load */
            ratings: components["schemas"]["AmplifierRating"][];
            /**
             * @description Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** @description Draw when switched off [A] */
            standbyA?: number;
        };
        /** @description What was asked beside what is built. */
        PlanAsked: {
            damping?: components["schemas"]["PlanAskedDamping"];
            space: components["schemas"]["PlanAskedSpace"];
            tuning?: components["schemas"]["PlanAskedTuning"];
            volume: components["schemas"]["PlanAskedVolume"];
        };
        /** @description Total Q of a closed box, asked beside built. */
        PlanAskedDamping: {
            /** @description Asked; absent where the plan was free to choose [1] */
            askedQtc?: number;
            /** @description Built [1] */
            builtQtc: number;
            /** @description Whether what is built is what was asked */
            kept: boolean;
        };
        /** @description The boot beside the box with its covering. */
        PlanAskedSpace: {
            /** @description Depth of the box, covered [mm] */
            boxDepthMm: number;
            /** @description Height of the box, covered [mm] */
            boxHeightMm: number;
            /** @description Width of the box, covered [mm] */
            boxWidthMm: number;
            /** @description Carpet on each face; 0 without [mm] */
            coveringMm: number;
            /** @description Depth of the space [mm] */
            depthMm?: number;
            /** @description Height of the space [mm] */
            heightMm?: number;
            /** @description Width of the space [mm] */
            widthMm?: number;
        };
        /** @description Tuning of a vented box, asked beside built. */
        PlanAskedTuning: {
            /** @description Asked; absent where the plan was free to choose [Hz] */
            askedHz?: number;
            /** @description Built [Hz] */
            builtHz: number;
            /** @description Whether what is built is what was asked */
            kept: boolean;
        };
        /** @description Net volume, asked beside built. */
        PlanAskedVolume: {
            /** @description Asked; absent where the plan was free to choose [L] */
            askedL?: number;
            /** @description Built [L] */
            builtL: number;
            /** @description Whether what is built is what was asked */
            kept: boolean;
        };
        /** @description The band of use: all within 6 dB of the loudest, around it. */
        PlanBand: {
            /** @description What the chart shows, as its title */
            finding: string;
            /** @description Lower end [Hz] */
            fromHz: number;
            /** @description Highest level at the gain of the plan [dB] */
            loudestDb: number;
            /** @description Where [Hz] */
            loudestHz: number;
            /**
             * @description `seat`: with the cabin of the request. `half-space`: at 1 m, for no cabin is known
             * @enum {string}
             */
            place: "seat" | "half-space";
            /** @description Upper end [Hz] */
            toHz: number;
            /** @description Real cars lie within ± this of the model [dB] */
            uncertaintyDb?: number;
        };
        /** @description What the box is made of. */
        PlanBoard: {
            /** @description Modulus in bending across the face grain [GPa] */
            acrossModulusGpa?: number;
            bracing?: components["schemas"]["PlanBracing"];
            /** @description Density [kg/m³] */
            densityKgPerM3?: number;
            /** @description Modulus in bending, along the face grain [GPa] */
            elasticModulusGpa?: number;
            /** @description Boards of the front */
            frontLayers?: number;
            /** @description Board */
            material?: components["schemas"]["BoardId"];
            /** @description Poisson ratio, strain along to stress across [1] */
            poisson?: number;
            /** @description Shear modulus in the plane of the board [GPa] */
            shearModulusGpa?: number;
            sheet?: components["schemas"]["PlanSheetSize"];
            terminal?: components["schemas"]["TerminalCup"];
            /** @description Thickness as measured [mm] */
            thicknessMm: number;
        };
        /** @description Asks for braces. Without it they are set where they fit, up to the crossover. */
        PlanBracing: {
            /** @description Top of the band the box plays; the crossover when absent [Hz] */
            upperHz?: number;
        };
        /** @description From the distribution block to one amplifier. */
        PlanBranch: {
            /** @description Amplifier it feeds */
            amplifier: string;
            /** @description Size with its series */
            designation: string;
            /** @description Of each cable at its far end, where a second battery feeds that too */
            endFuse?: components["schemas"]["ChosenFuse"];
            /** @description Of each cable; absent where none could be rated */
            fuse?: components["schemas"]["ChosenFuse"];
            /** @description Positive conductor, of one cable [m] */
            positiveLengthM: number;
            /**
             * @description `body`: a lead to bare metal; `cable`: a return conductor
             * @enum {string}
             */
            returnBy: "body" | "cable";
            /** @description Return conductor or lead, of one cable; 0 where the branches have it [m] */
            returnLengthM: number;
            /** @description Equal cables side by side, each with a fuse of its own */
            runs: number;
        };
        /** @description The capacitor, beside the amplifier or the block. */
        PlanCapacitor: {
            /** @description What it stands beside */
            at: string;
            /** @description Capacitance [F] */
            capacitanceF: number;
            /** @description Size of its leads */
            designation: string;
            /** @description Each of its two leads [m] */
            lengthM: number;
        };
        /** @description The vehicle around the box. */
        PlanCar: {
            cabin?: components["schemas"]["Cabin"];
            /** @description What drives the vehicle; `mild-hybrid` is a 48 V one without orange cables */
            drive?: components["schemas"]["VehicleDrive"];
            /** @description Mass of the vehicle [kg] */
            massKg?: number;
            restraint?: components["schemas"]["PlanRestraint"];
            space: components["schemas"]["PlanSpace"];
            /** @description Loudspeaker cable from amplifier to box [m] */
            speakerCableLengthM?: number;
        };
        /** @description Of the vehicle only the room for the box. */
        PlanCarPatch: {
            space: components["schemas"]["PlanSpacePatch"];
        };
        /** @description Raises the voltage of the first battery for a second one of another kind. */
        PlanCharger: {
            /** @description What it draws for that [A] */
            inputA: number;
            /** @description To the block; its fuse sits at the block, where the battery feeds it */
            lead: components["schemas"]["PlanLead"];
            /** @description Output [A] */
            ratedA: number;
        };
        /** @description Why this box, and what else could stand there. */
        PlanChoice: {
            /** @description None worse on all counts than another, far enough apart to be a choice */
            alternatives: components["schemas"]["PlanAlternative"][];
            /** @description Of the box that is planned */
            figures: components["schemas"]["SystemFigures"];
            /** @description The wish the box was searched for */
            goal: components["schemas"]["DesignGoal"];
        };
        /** @description Every conductor once, with size, length and fuse; bill, picture and steps show these. */
        PlanCircuit: {
            /** @description Amplifiers on the run, the bass amplifier first */
            amplifiers: string[];
            /** @description Behind the block; empty with one amplifier */
            branches: components["schemas"]["PlanBranch"][];
            capacitor?: components["schemas"]["PlanCapacitor"];
            /** @description To each driver inside the box, by its share of the current */
            insideWire?: components["schemas"]["PlanSpeakerWire"];
            /** @description In no bill and no picture */
            notPlanned: components["schemas"]["PlanNotPlanned"][];
            secondBattery?: components["schemas"]["PlanSecondBattery"];
            signalLead: components["schemas"]["PlanSignalLead"];
            /** @description From each output to the box; absent where no size fits */
            speakerWire?: components["schemas"]["PlanSpeakerWire"];
            /** @description Absent where no size passes */
            trunk?: components["schemas"]["PlanTrunk"];
            turnOnRelay?: components["schemas"]["PlanTurnOnRelay"];
        };
        /** @description The voice coils of one driver and the connection its sheet speaks of. */
        PlanCoils: {
            /**
             * @description Voice coils
             * @enum {integer}
             */
            count: 1 | 2 | 4;
            /** @description Rated impedance of one coil [Ω] */
            ratedOhm: number;
            /** @description Connection that Re of the sheet belongs to */
            resistanceStatedFor?: components["schemas"]["CoilConnection"];
            /** @description Connection that Bl, Q and Le of the sheet belong to */
            statedFor?: components["schemas"]["CoilConnection"];
        };
        /** @description The first page: one sentence, the band of use, what it rests on, what to know before anything else. */
        PlanCover: {
            /** @description Absent where no box fits */
            asked?: components["schemas"]["PlanAsked"];
            band?: components["schemas"]["PlanBand"];
            /** @description Cautions of this design, those that can hurt first, licensed work last; at most seven */
            pageOne: components["schemas"]["PlanFirstCaution"][];
            portAir?: components["schemas"]["PlanPortAir"];
            /** @description The system in one sentence */
            sentence: string;
            travel?: components["schemas"]["PlanTravel"];
        };
        /** @description One of the drivers, all alike. */
        PlanDriver: {
            coils: components["schemas"]["PlanCoils"];
            mounting?: components["schemas"]["DriverMounting"];
            /** @description Name */
            name?: string;
            /** @description Its data sheet; powerW is the continuous RMS rating and is needed here */
            sheet: components["schemas"]["DriverSheet"];
        };
        /** @description What the box should be; whatever is absent is chosen by driver and space. */
        PlanEnclosure: {
            /** @description Highest peak air speed in the port; 17, 25 and 34 are tried in turn when absent [m/s] */
            airSpeedMPerS?: number;
            /** @description Wish in plain words; volume, tuning and port are then searched for it: `everyday` even bass from 25 to 63 Hz in a box worth its room, `low` the most that 20 to 31.5 Hz can give, `loud` the most from 25 to 63 Hz, `tight` a closed box that starts and stops quickly, `small` the least room for at most 6 dB less than the loudest. `everyday` when neither it nor volume or Qtc is given */
            goal?: components["schemas"]["DesignGoal"];
            /** @description `closed` is tighter and smaller, `vented` louder and reaches lower */
            kind?: components["schemas"]["BoxKind"];
            /** @description Net volume wanted [L] */
            netVolumeL?: number;
            /** @description Clear area wanted of the port; it follows from the air speed when absent [cm²] */
            portAreaCm2?: number;
            /** @description Shape of the port */
            portShape?: components["schemas"]["PortShape"];
            /** @description Total Q wanted of a closed box [1] */
            qtc?: number;
            /** @description Tuning wanted of a vented box [Hz] */
            tuningHz?: number;
        };
        /** @description The chief figures of a plan; what a part did not give is absent. */
        PlanFigures: {
            /** @description Fastest air in the port, peak [m/s] */
            airSpeedMPerS?: number;
            /** @description Current on average with music [A] */
            averageA?: number;
            /** @description Equal cables side by side */
            cableRuns?: number;
            /** @description Largest excursion, peak, one way [mm] */
            coneExcursionMm?: number;
            /** @description Depth of the box outside, at its bottom [mm] */
            depthMm?: number;
            /** @description Half power [Hz] */
            f3Hz?: number;
            /** @description Current at full sine [A] */
            fullSineA?: number;
            /** @description Fuse of each of them near the battery [A] */
            fuseA?: number;
            /** @description Voltage to set the gain to, RMS [V] */
            gainV?: number;
            /** @description Height of the box outside [mm] */
            heightMm?: number;
            /** @description Load on each output [Ω] */
            loadOhm?: number;
            /** @description Box with its drivers [kg] */
            massKg?: number;
            /** @description Air in the box [L] */
            netVolumeL?: number;
            /** @description Highest level in half space at 1 m [dB] */
            peakLevelDb?: number;
            /** @description Size of the cable from the battery */
            powerCable?: string;
            /** @description Continuous power of all outputs together after the gain is set [W] */
            powerW?: number;
            /** @description Tuning of a vented box [Hz] */
            tuningHz?: number;
            /** @description Width of the box outside [mm] */
            widthMm?: number;
        };
        /** @description How the box is finished. */
        PlanFinish: {
            /** @description Whether the box is covered with carpet */
            covered?: boolean;
            /** @description Whether the walls are lined with wadding */
            lined?: boolean;
        };
        /** @description A caution in short; the whole of it stands at its step or part. */
        PlanFirstCaution: {
            /** @description The danger in a few words */
            clause: string;
            /** @description Code of the caution; /v1/cautions documents each */
            code: components["schemas"]["CautionCode"];
            /** @description Its first sentence, with the figures of this design */
            sentence: string;
            /** @description Number of the step where it counts */
            step?: number;
        };
        /** @description One danger of the work, and what stands against it. */
        PlanHazard: {
            /** @description What keeps it away */
            barrier: string;
            /** @description Where it is known from */
            basis: string;
            /** @description Code of the caution; /v1/cautions documents each */
            caution?: components["schemas"]["CautionCode"];
            /**
             * @description Whose work it is
             * @enum {string}
             */
            hands: "maker" | "second-person" | "several-people" | "trained-person";
            /**
             * @description The worst it can do
             * @enum {string}
             */
            harm: "death" | "lasting-harm" | "fire" | "illness" | "injury" | "law" | "damage";
            /** @description Name of the danger */
            id: string;
            /** @description Brought by what was chosen for this plan, not by the work as such */
            peculiar: boolean;
            /** @description How one sees that it does */
            proof: string;
            /** @description Ids of the steps where it can happen; the first one says it */
            steps: string[];
        };
        /** @description What the limits of the parts cost. */
        PlanHeadroom: {
            /** @description The first reached first */
            limits: components["schemas"]["ReachedLimit"][];
            /** @description The same in a sentence or two */
            text: string;
            /** @description The plan first */
            ways: components["schemas"]["DriveWay"][];
        };
        /** @description A cable with its way back and its fuse. */
        PlanLead: {
            /** @description Size with its series */
            designation: string;
            /** @description Of each cable at its far end, where a second battery feeds that too */
            endFuse?: components["schemas"]["ChosenFuse"];
            /** @description Of each cable; absent where none could be rated */
            fuse?: components["schemas"]["ChosenFuse"];
            /** @description Positive conductor, of one cable [m] */
            positiveLengthM: number;
            /**
             * @description `body`: a lead to bare metal; `cable`: a return conductor
             * @enum {string}
             */
            returnBy: "body" | "cable";
            /** @description Return conductor or lead, of one cable; 0 where the branches have it [m] */
            returnLengthM: number;
            /** @description Equal cables side by side, each with a fuse of its own */
            runs: number;
        };
        /** @description A part of the system that this plan leaves out. */
        PlanNotPlanned: {
            /** @description Gravity */
            level: components["schemas"]["CautionLevel"];
            /** @description What is missing of it */
            text: string;
            /** @description The part */
            what: string;
        };
        /** @description What stands on pages and papers beside the plan: units, who publishes it, when and where; the JSON answer is metric always. */
        PlanPaper: {
            /** @description Who publishes the plan */
            author?: string;
            /** @description Date of this revision, as it shall be printed */
            date?: string;
            /** @description How inches are written */
            inches?: components["schemas"]["InchStyle"];
            /** @description Licence the plan is published under */
            licence?: string;
            /** @description Address at which the plan can be made again; printed, and as a code for a camera */
            link?: string;
            /** @description Revision */
            revision?: string;
            /** @description Units on paper */
            units?: components["schemas"]["PaperUnits"];
        };
        /** @description Each part of the chain, as its own resource answers it; with `?parts=` only those asked for. */
        PlanParts: {
            box?: components["schemas"]["LayOutBoxPart"];
            cable?: components["schemas"]["ChooseCablePart"];
            /** @description All of it together: every voltage and current of the plan */
            circuit?: components["schemas"]["ComputeCircuitPart"];
            current?: components["schemas"]["ComputeCurrentPart"];
            driver?: components["schemas"]["CompleteDriverParametersPart"];
            fuse?: components["schemas"]["RateFusePart"];
            matching?: components["schemas"]["MatchAmplifierPart"];
            /** @description Absent for a closed box */
            port?: components["schemas"]["SizePortPart"];
            response?: components["schemas"]["ComputeResponsePart"];
            sheets?: components["schemas"]["NestPanelsPart"];
            signal?: components["schemas"]["SetUpSignalPart"];
            sizing?: components["schemas"]["SizeEnclosurePart"];
            wiring?: components["schemas"]["WireCoilsPart"];
        };
        /** @description Fastest air in a port at the gain of the plan. */
        PlanPortAir: {
            /** @description What the chart shows, as its title */
            finding: string;
            /** @description Whether it keeps to the limit */
            held: boolean;
            /** @description Beyond this nothing is built [m/s] */
            limitMPerS: number;
            /** @description Where [Hz] */
            peakHz: number;
            /** @description Peak [m/s] */
            peakMPerS: number;
            /** @description Up to here sharp ends are not heard [m/s] */
            quietMPerS: number;
        };
        /** @description One reading, worked out for the state of music and engine in which it is taken. */
        PlanReading: {
            /** @description What it means where it reads more */
            above?: string;
            /** @description What it means where it reads less */
            below?: string;
            /** @description What the circuit gives, in `unit`; absent where only a limit is known [1] */
            expected?: number;
            /** @description Most that still fits the plan, in `unit` [1] */
            highest?: number;
            /** @description Least that still fits the plan, in `unit` [1] */
            lowest?: number;
            /** @description Where the meter goes */
            probes: string;
            /** @description Id of the step of commissioning it belongs to */
            step: string;
            /**
             * @description Unit of the figures
             * @enum {string}
             */
            unit: "V" | "mV" | "A" | "mA" | "mΩ" | "Ω";
            /** @description What is measured */
            what: string;
            /** @description Music and engine */
            when: string;
        };
        /** @description Why a plan is not ready. */
        PlanReason: {
            /** @description Code of a caution or a problem; `no-box-fits`; `waiting`: parts that only wait for another */
            code: string;
            /** @description The same for people */
            detail: string;
            /** @description Name of the part it comes from, where it is one */
            part?: string;
            /** @description JSON pointer into the request of the plan, where a field is meant */
            pointer?: string;
        };
        /** @description A change that mends or eases a limit, worked out by planning again. */
        PlanRemedy: {
            after: components["schemas"]["RemedyFigures"];
            before: components["schemas"]["RemedyFigures"];
            /**
             * @description What it costs, the least first
             * @enum {string}
             */
            cost: "reading" | "setting" | "cable" | "battery" | "alternator" | "driver";
            /** @description Cautions that are gone with it, or no longer as grave */
            cures: components["schemas"]["CautionCode"][];
            /**
             * @description Which change
             * @enum {string}
             */
            id: "measure-body" | "lower-gain" | "other-insulation" | "next-size" | "full-copper" | "return-cable" | "second-battery" | "stronger-alternator" | "other-coils";
            /** @description Absent for a setting that no field of the request holds */
            patch?: components["schemas"]["RemedyPatch"];
            /** @description What to do and what it brings */
            text: string;
        };
        /** @description Data sheets, the car and its supply: everything one plan is made from. */
        PlanRequest: {
            air?: components["schemas"]["Air"];
            amplifier: components["schemas"]["PlanAmplifier"];
            board: components["schemas"]["PlanBoard"];
            car: components["schemas"]["PlanCar"];
            driver: components["schemas"]["PlanDriver"];
            /** @description Drivers, all alike, in one box */
            driverCount: number;
            enclosure?: components["schemas"]["PlanEnclosure"];
            finish?: components["schemas"]["PlanFinish"];
            /** @description Title of the plan */
            name?: string;
            paper?: components["schemas"]["PlanPaper"];
            signal: components["schemas"]["PlanSignal"];
            supply: components["schemas"]["PlanSupply"];
        };
        /** @description Straps that hold the box, where it is not bolted. */
        PlanRestraint: {
            /** @description What one lashing eye holds, by the vehicle’s handbook [N] */
            eyeStrengthN?: number;
            /** @description Lashing capacity printed on one strap [N] */
            strapCapacityN?: number;
            /** @description Steepest strap, against the floor [°] */
            strapSlopeDeg?: number;
            /** @description Strap farthest aside from the direction of travel, seen from above [°] */
            strapSpreadDeg?: number;
        };
        /** @description A system that can be bought, cut, wired and switched on. All of it comes, but what its description says is absent; with `?parts=` the summary and what was asked for. */
        PlanResult: {
            /** @description What to buy */
            billOfMaterials?: components["schemas"]["BillRow"][];
            /** @description Absent where no box fits */
            buildOrder?: components["schemas"]["BuildOrder"];
            /** @description Absent where volume or Qtc is given, or nothing was found for the wish */
            choice?: components["schemas"]["PlanChoice"];
            circuit?: components["schemas"]["PlanCircuit"];
            /** @description Switching on, in this order */
            commissioning?: components["schemas"]["CommissioningStep"][];
            cover?: components["schemas"]["PlanCover"];
            /** @description Absent where no box fits */
            headroom?: components["schemas"]["PlanHeadroom"];
            /** @description Title; absent where none was given */
            name?: string;
            parts?: components["schemas"]["PlanParts"];
            /** @description What the meter shows at each of these steps */
            readings?: components["schemas"]["PlanReading"][];
            /** @description For what the supply is short of, the best first; empty where it is short of nothing */
            remedies?: components["schemas"]["PlanRemedy"][];
            restraint?: components["schemas"]["Restraint"];
            /** @description Every danger of this plan with its barrier, at its steps */
            safety?: components["schemas"]["PlanHazard"][];
            summary: components["schemas"]["PlanSummary"];
            /** @description Enclosures passed over on the way */
            tried?: components["schemas"]["PlanTried"][];
            /** @description Only where no box fits */
            waysOut?: components["schemas"]["PlanWaysOut"];
            /** @description The planned box, then each figure a tenth down and up: closed forms beside the planned figures, so that a row says what moves */
            whatIf?: components["schemas"]["WhatIfRow"][];
        };
        /** @description The second battery, beside the block. */
        PlanSecondBattery: {
            charger?: components["schemas"]["PlanCharger"];
            /** @description From it to the block; absent where no size passes */
            lead?: components["schemas"]["PlanLead"];
            /**
             * @description What ties it to the first: `relay` closes while the engine runs; `charger`; `joined` for good
             * @enum {string}
             */
            link: "relay" | "charger" | "joined";
            /** @description Capacity and kind */
            name: string;
            /** @description Rating of the relay, above all that the fuses let through [A] */
            relayA?: number;
        };
        /** @description The sheet the panels are cut from. */
        PlanSheetSize: {
            /** @description Width of the saw cut [mm] */
            kerfMm?: number;
            /** @description Length [mm] */
            lengthMm: number;
            /** @description Price of one sheet, in any currency [1] */
            price?: number;
            /** @description Width [mm] */
            widthMm: number;
        };
        /** @description Where the music comes from and how the amplifier is switched on. */
        PlanSignal: {
            /** @description Line level a line-output converter is set to [V] */
            converterLineV?: number;
            /** @description RMS power of all outputs to set the gain for; of a searched box what it holds, else all [W] */
            gainPowerW?: number;
            input?: components["schemas"]["SignalInput"];
            /** @description Amplifier inputs on one line output */
            inputsInParallel?: number;
            /** @description Lower end of the front loudspeakers [Hz] */
            mainsLowHz?: number;
            source?: components["schemas"]["SignalSource"];
            tone?: components["schemas"]["TestTone"];
            turnOn?: components["schemas"]["TurnOnRequest"];
        };
        /** @description From the source to the amplifier. */
        PlanSignalLead: {
            /** @description Whether it ends in a line-output converter beside the amplifier */
            converter: boolean;
            /** @description How many of them */
            count: number;
            /**
             * @description `screened` for a line level; `twisted-pair` for a loudspeaker level, without a screen
             * @enum {string}
             */
            kind: "screened" | "twisted-pair";
            /** @description Length of one [m] */
            lengthM: number;
            /** @description What to buy */
            name: string;
            /** @description Turn-on wire; 0 where the source switches none [m] */
            turnOnLengthM: number;
        };
        /** @description Room for the box in the car. */
        PlanSpace: {
            /** @description Play on every side [mm] */
            clearanceMm?: number;
            /** @description Carpet on every face [mm] */
            coveringMm?: number;
            /** @description Deepest, at the floor [mm] */
            depthMm?: number;
            /** @description Highest [mm] */
            heightMm?: number;
            /** @description Wheel arches and other blocks in the way */
            keepOuts?: components["schemas"]["KeepOut"][];
            opening?: components["schemas"]["BootOpening"];
            /** @description Lean of the seat back from the vertical, into the boot [°] */
            seatSlopeDeg?: number;
            /**
             * @description Shape of the box; a wedge leans with the seat
             * @enum {string}
             */
            shape?: "rectangular" | "wedge";
            /** @description Which way the box grows where there is a choice */
            strategy?: components["schemas"]["BoxStrategy"];
            /** @description Widest [mm] */
            widthMm?: number;
        };
        /** @description Larger room for the box. */
        PlanSpacePatch: {
            /** @description Depth [mm] */
            depthMm?: number;
            /** @description Height [mm] */
            heightMm?: number;
            /** @description Width [mm] */
            widthMm?: number;
        };
        /** @description Two-core loudspeaker wire of one size. */
        PlanSpeakerWire: {
            /** @description Conductor section [mm²] */
            areaMm2: number;
            /** @description How many of them */
            count: number;
            /** @description Full sine in one of them, RMS [A] */
            currentA: number;
            /** @description Size with its series */
            designation: string;
            /** @description Length of one [m] */
            lengthM: number;
        };
        /** @description The plan in a few lines. */
        PlanSummary: {
            figures: components["schemas"]["PlanFigures"];
            /** @description What will be built, a sentence a part */
            lines: string[];
            /** @description Why it is stopped or incomplete, the gravest first */
            reasons: components["schemas"]["PlanReason"][];
            /**
             * @description `ready`; `take-care`: read the cautions first; `incomplete`: a part could not be done; `stop`: do not build or switch this on
             * @enum {string}
             */
            verdict: "ready" | "take-care" | "incomplete" | "stop";
        };
        /** @description Battery, cable run, charging. Lengths are conductor lengths. */
        PlanSupply: {
            /** @description Hottest surroundings along the run [°C] */
            ambientC?: number;
            battery?: components["schemas"]["BatteryRequest"];
            /** @description Conductor length from the distribution block to each amplifier [m] */
            branchLengthM?: number;
            /** @description Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            capacitor?: components["schemas"]["CapacitorRequest"];
            charging?: components["schemas"]["ChargingRequest"];
            /** @description Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
            conductor?: components["schemas"]["Conductor"];
            /** @description Largest drop on the conductors, of nominal voltage [%] */
            dropLimitPercent?: number;
            /** @description Battery terminal to fuse, along the cable [mm] */
            fuseDistanceMm?: number;
            /** @description Series of the size; AWG, SAE and mm² are different sizes */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** @description Temperature class printed on the insulation [°C] */
            insulationC?: number;
            /** @description What the insulation is made of; sets what it survives in a short circuit, which its class does not: PVC 160 °C, XLPE (cross-linked polyethylene) and EPR 250 °C, rubber 200 to 220 °C, silicone 350 °C */
            insulationMaterial?: components["schemas"]["InsulationMaterial"];
            /** @description External fuse the amplifier’s maker states [A] */
            makerFuseA?: number;
            /** @description Further amplifiers on the same run */
            otherAmplifiers?: components["schemas"]["SupplyAmplifier"][];
            /** @description Conductor length of the positive run [m] */
            positiveLengthM: number;
            return: components["schemas"]["ReturnPath"];
            secondBattery?: components["schemas"]["SecondBatteryRequest"];
            /** @description Whether that stretch lies in a sheath all the way */
            sheathed?: boolean;
            source?: components["schemas"]["BatterySource"];
            /** @description Spaces the run passes; the hottest gives the ambient when ambientC is left out */
            spaces?: components["schemas"]["RunSpace"][];
            /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
            systemVoltageV: number;
            /** @description Largest conductor the amplifier’s terminal takes [mm²] */
            terminalAreaMm2?: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        PlanSystemAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["PlanResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description Largest excursion of a cone at the gain of the plan. */
        PlanTravel: {
            /** @description What the chart shows, as its title */
            finding: string;
            /** @description Whether it keeps to the limit */
            held: boolean;
            /** @description Xmax of the driver [mm] */
            limitMm?: number;
            /** @description Where [Hz] */
            peakHz: number;
            /** @description One way from rest [mm] */
            peakMm: number;
        };
        /** @description An enclosure that was tried before the chosen one. */
        PlanTried: {
            /** @description Alignment */
            name: string;
            /** @description Net volume [L] */
            netVolumeL: number;
            /** @description Tuning [Hz] */
            tuningHz?: number;
            /** @description Why it was passed over */
            why: string;
        };
        /** @description From the battery to the amplifier, or to the distribution block. */
        PlanTrunk: {
            /** @description Size with its series */
            designation: string;
            /** @description Of each cable at its far end, where a second battery feeds that too */
            endFuse?: components["schemas"]["ChosenFuse"];
            /** @description Of each cable; absent where none could be rated */
            fuse?: components["schemas"]["ChosenFuse"];
            /** @description Positive conductor, of one cable [m] */
            positiveLengthM: number;
            /**
             * @description `body`: a lead to bare metal; `cable`: a return conductor
             * @enum {string}
             */
            returnBy: "body" | "cable";
            /** @description Return conductor or lead, of one cable; 0 where the branches have it [m] */
            returnLengthM: number;
            /** @description Equal cables side by side, each with a fuse of its own */
            runs: number;
        };
        /** @description The relay that switches the amplifiers on. */
        PlanTurnOnRelay: {
            /** @description Current of its coil [A] */
            coilCurrentA: number;
            /** @description Fuse of its feed [A] */
            fuseA: number;
            /** @description Wire of its feed, of the size of the turn-on wire [m] */
            wireM: number;
        };
        /** @description A change with which there is a box to build; it was planned before it is offered. */
        PlanWayOut: {
            /** @description What is built then */
            builds: string;
            /** @description What to change */
            change: string;
            patch: components["schemas"]["WayOutPatch"];
        };
        /** @description Where no box fits: what would make one fit. */
        PlanWaysOut: {
            /** @description The least change first */
            changes: components["schemas"]["PlanWayOut"][];
            largestDriver?: components["schemas"]["LargestDriver"];
        };
        /** @description A point of the circuit. */
        PointVoltage: {
            /** @description Its name */
            point: string;
            /** @description Against the minus pole of the first battery [V] */
            voltageV: number;
        };
        /** @description Equal ports of one chamber. */
        Port: {
            /** @description Cross-section of one port [cm²] */
            areaCm2: number;
            /** @description Number of equal ports */
            count?: number;
            /** @description Sum of both end corrections over the radius of one port: flush 0.85, free 0.613 [1] */
            endFactor?: number;
            /** @description Physical length of one port [mm] */
            lengthMm: number;
            /** @description Q of the friction in the port at its tuning; absent: no friction [1] */
            lossQ?: number;
        };
        /** @description The air the ports carry at full drive and the area that asks for. */
        PortDemand: {
            /** @description Area of all ports together that keeps the limit [cm²] */
            areaCm2: number;
            /**
             * @description What it rests on
             * @enum {string}
             */
            by: "network" | "swept-volume" | "given-flow";
            /** @description The same with the drive held back to Xmax at each frequency [cm²] */
            excursionLimitedAreaCm2?: number;
            /** @description Flow at the tuning, peak [m³/s] */
            flowAtTuningM3PerS?: number;
            /** @description Air-speed limit, peak [m/s] */
            limitMPerS: number;
            /** @description Where it is highest, from the high-pass corner up [Hz] */
            peakFlowHz?: number;
            /** @description Highest flow through all ports, peak [m³/s] */
            peakFlowM3PerS: number;
            /** @description Second opinion: 0.8·fB·VD, for 5 % of the speed of sound at Xmax [cm²] */
            ruleAreaCm2?: number;
        };
        /** @description One port, or several equal ones. */
        PortDesign: {
            /** @description Peak air speed at the tuning, full drive [m/s] */
            airSpeedAtTuningMPerS?: number;
            /** @description Where it is highest [Hz] */
            airSpeedHz?: number;
            /** @description Highest peak air speed, full drive [m/s] */
            airSpeedMPerS?: number;
            /** @description Air inside all ports; their walls come on top [L] */
            airVolumeL: number;
            /** @description Clear area of one [cm²] */
            areaCm2: number;
            /** @description Mitred right-angle bends */
            bends: number;
            /** @description Equal ports */
            count: number;
            /** @description Clear diameter [mm] */
            diameterMm?: number;
            /** @description Length the air sees, both ends in it [mm] */
            effectiveLengthMm: number;
            /** @description Both ends over the radius of one port; /v1/enclosures/response takes it [1] */
            endFactor: number;
            /** @description Nothing is against it */
            fits: boolean;
            /** @description Clear height of a slot [mm] */
            heightMm?: number;
            /** @description Four times the area of one over its perimeter [mm] */
            hydraulicDiameterMm: number;
            /** @description Shape */
            kind: components["schemas"]["PortShape"];
            /** @description Physical length along the centre line; zero or less: the area is too small for the tuning [mm] */
            lengthMm: number;
            /** @description K of ends, walls and bends; `limits.portLossFactor` of /v1/enclosures/response takes it [1] */
            lossFactor: number;
            /** @description Q of the friction along the walls; `port.lossQ` of /v1/enclosures/response takes it [1] */
            lossQ: number;
            /** @description Name for people */
            name: string;
            otherEnds: components["schemas"]["PortOtherEnds"];
            /** @description First resonance as an open pipe [Hz] */
            pipeResonanceHz: number;
            /** @description Clear area of all [cm²] */
            totalAreaCm2: number;
            /** @description Tuning [Hz] */
            tuningHz: number;
            /** @description Tuning with the port as a waveguide instead of a lump [Hz] */
            waveguideTuningHz: number;
            /** @description Reasons with figures, those against first */
            why: string[];
            /** @description Clear width of a slot [mm] */
            widthMm?: number;
            /** @description Keeps the air-speed limit */
            withinLimit?: boolean;
        };
        /**
         * @description How the ends of a port are reckoned.
         * @enum {string}
         */
        PortEndModel: "convention" | "by-shape";
        /** @description How the ends stand. */
        PortEnds: {
            /** @description Inner end: `flanged` flush in a panel, `free` standing in the box */
            inner?: components["schemas"]["PortEndSituation"];
            /** @description Outer end */
            outer?: components["schemas"]["PortEndSituation"];
        };
        /**
         * @description What an end of a port opens into.
         * @enum {string}
         */
        PortEndSituation: "flanged" | "free";
        /** @description The port as built. */
        PortLayout: {
            /** @description The same less what the air cuts off at mitred bends [mm] */
            acousticLengthMm: number;
            /** @description Of one [cm²] */
            areaCm2: number;
            /** @description How many */
            count: number;
            /** @description Air it takes from the box, walls included [L] */
            displacedL: number;
            /** @description The part behind the inner face of the panel [mm] */
            insideLengthMm: number;
            /** @description Tubes or a slot */
            kind: components["schemas"]["PortShape"];
            /** @description Straight parts along the walls */
            legs: number;
            /** @description Outer face to inner mouth along the centre line [mm] */
            lengthMm: number;
            /** @description Of a slot: clear before its inner mouth [mm] */
            mouthGapMm?: number;
            /** @description First resonance of the port as a pipe [Hz] */
            pipeResonanceHz: number;
            /** @description Of a slot over the full width: with the end its walls and the facing wall give it, within some 10 % [Hz] */
            placedTuningHz?: number;
            /** @description How far it is from that, after rounding to a millimetre [%] */
            tuningErrorPercent?: number;
            /** @description With end factors of the circle of equal area [Hz] */
            tuningHz: number;
            /** @description At each bend */
            turnsDeg: number[];
            /** @description The tuning asked for [Hz] */
            wantedTuningHz?: number;
        };
        /** @description Physical length that gives the same tuning with the same count, area and volume, by the situation of the two ends. */
        PortLengthsForTuning: {
            /** @description Both ends flush [mm] */
            bothFlangedMm: number;
            /** @description Both ends free [mm] */
            bothFreeMm: number;
            /** @description One end flush with a panel, one free [mm] */
            flangedFreeMm: number;
        };
        /**
         * @description Edge of a mouth.
         * @enum {string}
         */
        PortMouth: "sharp" | "flared";
        /** @description The same port by the other way of counting its ends. */
        PortOtherEnds: {
            /** @description Length it would ask for [mm] */
            lengthMm: number;
            /** @description The other way */
            model: components["schemas"]["PortEndModel"];
            /** @description Tuning of the length given here, if the other way is right [Hz] */
            tuningHz: number;
        };
        /**
         * @description Shape of a port.
         * @enum {string}
         */
        PortShape: "round" | "slot";
        /** @description A vented box looking for its port. */
        PortSizingRequest: {
            air?: components["schemas"]["Air"];
            /** @description Peak; 17 for sharp ends, 25 for flares when absent; above 34, 10 % of the speed of sound, none is built [m/s] */
            airSpeedLimitMPerS?: number;
            /** @description Mitred right-angle bends */
            bends?: number;
            driver?: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            /** @description `convention`: 0.85 flanged, 0.613 free, times the radius of equal area. `by-shape`: exact pipe ends, slots by shape and wall. */
            endModel?: components["schemas"]["PortEndModel"];
            ends?: components["schemas"]["PortEnds"];
            /** @description Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            /** @description Lowest frequency at which the flow is looked at. Absent: 15 where the filters hold a high-pass, otherwise 0.8 of the tuning [Hz] */
            highPassHz?: number;
            /** @description Leak of the box as a Q at the tuning [1] */
            leakQ?: number;
            /** @description Upper end of the range the box plays [Hz] */
            lowPassHz?: number;
            /** @description Ends `sharp`, or `flared` at both sides */
            mouth?: components["schemas"]["PortMouth"];
            /** @description Net volume, port and driver taken off [L] */
            netVolumeL: number;
            /** @description In place of the driver: peak flow [m³/s] */
            peakFlowM3PerS?: number;
            port?: components["schemas"]["PortWish"];
            /** @description Full drive; the rated power of the drivers when absent */
            source?: components["schemas"]["Source"];
            space?: components["schemas"]["PortSpace"];
            /** @description In place of the driver: area times one-way excursion of all cones [L] */
            sweptVolumeL?: number;
            /** @description Tuning; follows from a port given whole [Hz] */
            tuningHz?: number;
        };
        /** @description Ports for the box, the one to build, and what else would fit. */
        PortSizingResult: {
            /** @description Every port looked at */
            candidates: components["schemas"]["PortDesign"][];
            demand?: components["schemas"]["PortDemand"];
            /** @description The recommended port keeps tuning, air speed and space */
            fits: boolean;
            /** @description The port to build, or the one nearest to it */
            recommended: components["schemas"]["PortDesign"];
            /** @description Tuning the ports are for, or that of the port given whole [Hz] */
            tuningHz: number;
            /** @description What would fit where the recommended port does not */
            waysOut: components["schemas"]["PortWayOut"][];
        };
        /** @description Room for the port. */
        PortSpace: {
            /** @description Longest centre line with bends [mm] */
            bentMm?: number;
            /** @description Longest straight run from the outer face, clearance behind the mouth taken off [mm] */
            straightMm?: number;
        };
        /** @description A change with which a port would fit. */
        PortWayOut: {
            /** @description Peak air speed, full drive [m/s] */
            airSpeedMPerS?: number;
            /**
             * @description What to change
             * @enum {string}
             */
            change: "one-bend" | "smaller-area" | "larger-area" | "fewer-ports" | "larger-box" | "higher-tuning" | "smaller-box-higher-tuning" | "flared-mouths" | "less-drive" | "narrower-slot" | "passive-radiator";
            /** @description Ports */
            count?: number;
            /** @description The change with its figures */
            detail: string;
            /** @description Physical length [mm] */
            lengthMm?: number;
            /** @description Net volume [L] */
            netVolumeL?: number;
            /** @description Share of the power of the drive [1] */
            powerShare?: number;
            /** @description Area of all passive radiators [cm²] */
            radiatorAreaCm2?: number;
            /** @description Moving mass of all of them, very soft suspension [g] */
            radiatorMassG?: number;
            /** @description Area of all ports [cm²] */
            totalAreaCm2?: number;
            /** @description Tuning [Hz] */
            tuningHz?: number;
        };
        /** @description The kind of port, and whatever of its size is fixed. */
        PortWish: components["schemas"]["RoundPortWish"] | components["schemas"]["SlotPortWish"];
        /** @description An upright box over a free polygon. */
        Prism: {
            /** @description Edge with the front: 1 runs from the first corner to the second */
            baffleEdge?: number;
            /** @description Outer corners in order, either way round */
            footprint: components["schemas"]["FootprintCorner"][];
        };
        /** @description A refusal, as RFC 9457 describes it. */
        Problem: {
            /** @description Code of the problem; /v1/problems documents each */
            code: components["schemas"]["ProblemCode"];
            /** @description This occurrence in a sentence */
            detail: string;
            /** @description Every fault found */
            errors?: components["schemas"]["ProblemError"][];
            /** @description Carries the request id */
            instance?: string;
            /** @description HTTP status */
            status: number;
            /** @description The problem in a few words, the same for every occurrence */
            title: string;
            /** @description Path of the documentation of this problem */
            type: string;
        };
        /** @description Every kind of refusal. */
        ProblemCatalogue: {
            /** @description By code */
            problems: components["schemas"]["ProblemKind"][];
        };
        /** @description Code of a problem; /v1/problems documents each. More may come with any version; take what you do not know as it is. */
        ProblemCode: string;
        /** @description One fault of the request. */
        ProblemError: {
            /** @description The bound that was broken, or the values allowed */
            bounds?: {
                [key: string]: unknown;
            };
            /** @description What kind of fault it is */
            code: string;
            /** @description The fault in a sentence */
            detail: string;
            /** @description Query parameter, where the request was spelled in a query */
            parameter?: string;
            /** @description JSON pointer (RFC 6901) to the fault in the request */
            pointer: string;
        };
        /** @description One kind of refusal. */
        ProblemKind: {
            /** @description Stable code, as in the problem document */
            code: string;
            /** @description What it means and what to do */
            meaning: string;
            /** @description HTTP status it comes with */
            status: number;
            /** @description The problem in a few words */
            title: string;
            /** @description Path of this entry, as in `type` of the problem document */
            type: string;
        };
        /** @description How far the drive can go before the first limit is reached. */
        ProgrammeLimit: {
            /** @description Where that limit is reached [Hz] */
            atHz: number;
            /** @description Excursion of a cone or passive radiator, heat in the coil, voltage by the rating, voltage or current of the amplifier, air speed */
            limit: components["schemas"]["LimitName"];
            /** @description What that voltage gives into the DC resistance of the drivers [W] */
            powerW: number;
            /** @description Largest source voltage before the filters at which no frequency passes a limit, RMS [V] */
            voltageV: number;
        };
        /** @description A cable a fuse protects. */
        ProtectedCable: {
            /** @description Hottest surroundings along the run [°C] */
            ambientC?: number;
            /** @description Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** @description Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            /** @description Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series */
            designation: string;
            /** @description Series of the size; AWG, SAE and mm² are different sizes */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** @description Temperature class printed on the insulation [°C] */
            insulationC?: number;
            /** @description Spaces the run passes; the hottest gives the ambient when ambientC is left out */
            spaces?: components["schemas"]["RunSpace"][];
        };
        /** @description How a pure number scatters. */
        PureSpread: {
            /** @description Mean of the samples [1] */
            mean: number;
            /** @description With every part as printed [1] */
            nominal: number;
            /** @description At each percentile asked for, in its order */
            percentiles: number[];
            /** @description Standard deviation of the samples [1] */
            standardDeviation: number;
        };
        /** @description A chamber with passive radiators. */
        RadiatorChamber: {
            /** @description Q of the absorption at the frequency of the chamber; absent: none [1] */
            absorptionQ?: number;
            /** @description Q of the leak to the outside at the frequency of the chamber; absent: tight [1] */
            leakQ?: number;
            /** @description Acoustic volume for all drivers together [L] */
            netVolumeL: number;
            passiveRadiators: components["schemas"]["PassiveRadiators"];
        };
        /**
         * @description What a power of a data sheet stands for; peak figures are refused.
         * @enum {string}
         */
        RatedPower: "continuous" | "peak" | "unknown";
        /** @description Result with its cautions, assumed defaults and sources. */
        RateFuseAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["FuseResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/supply/fuses gives. */
        RateFuseDone: {
            answer: components["schemas"]["RateFuseAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["FuseRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/supply/fuses gives, or why not. */
        RateFusePart: components["schemas"]["RateFuseDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /**
         * @description What kind of figure a rated power is.
         * @enum {string}
         */
        RatingKind: "rms" | "peak" | "max" | "total";
        /** @description A limit of the parts, and what reaches it without a high-pass. */
        ReachedLimit: {
            /** @description Where in the programme it is reached [Hz] */
            atHz: number;
            /** @description Which limit */
            limit: components["schemas"]["LimitName"];
            /** @description Power of all outputs that reaches it, the crossover set [W] */
            powerW: number;
        };
        /** @description A system that was dropped, and why. */
        RejectedDesign: {
            /** @description Name of the amplifier */
            amplifier: string;
            /** @description By how much the limit is broken, in `unit` [1] */
            beyond?: number;
            /** @description The limit, in `unit` [1] */
            bound?: number;
            /** @description Why, with figures */
            detail: string;
            /** @description Name of the driver */
            driver: string;
            /** @description Drivers */
            driverCount: number;
            /** @description Of the alignment that came nearest */
            figures?: components["schemas"]["DesignFigures"];
            /** @description Kind of box */
            kind: components["schemas"]["BoxKind"];
            /** @description `match`: no published power at a load the drivers present; `driver-data`; `supply`: no cable or fuse; `space`; `enclosure`: no alignment suits; `response`; `signal`; `stop-caution`: must not be built; else the limit that is broken most */
            rule: components["schemas"]["RejectionRule"];
            /** @description Unit of the figure */
            unit?: string;
            /** @description The figure that breaks the limit, in `unit` [1] */
            value?: number;
        };
        /** @description How many systems one reason dropped. */
        RejectionCount: {
            /** @description Systems */
            count: number;
            /** @description `match`: no published power at a load the drivers present; `driver-data`; `supply`: no cable or fuse; `space`; `enclosure`: no alignment suits; `response`; `signal`; `stop-caution`: must not be built; else the limit that is broken most */
            rule: components["schemas"]["RejectionRule"];
        };
        /** @description Why a system was not chosen. More may come with any version; take what you do not know as it is. */
        RejectionRule: string;
        /** @description One terminal of the relay. */
        RelayTerminal: {
            /**
             * @description Terminal number of DIN 72552
             * @enum {string}
             */
            terminal: "30" | "85" | "86" | "87";
            /** @description Where it goes */
            to: string;
        };
        /** @description Figures of the supply side; absent where there is none. */
        RemedyFigures: {
            /** @description Main cable */
            cable?: string;
            /** @description Least at an amplifier, full sine, driving [V] */
            fullSineV?: number;
            /** @description Least at an amplifier, dense bass, engine idling [V] */
            heavyV?: number;
        };
        /** @description JSON Merge Patch (RFC 7396) on the request of the plan. */
        RemedyPatch: {
            driver?: components["schemas"]["CoilsPatch"];
            supply?: components["schemas"]["SupplyPatch"];
        };
        /** @description How an impedance scatters. */
        ResistanceSpread: {
            /** @description Mean of the samples [Ω] */
            meanOhm: number;
            /** @description With every part as printed [Ω] */
            nominalOhm: number;
            /** @description At each percentile asked for, in its order */
            percentilesOhm: number[];
            /** @description Standard deviation of the samples [Ω] */
            standardDeviationOhm: number;
        };
        /** @description Curves over frequency, arrays of equal length. */
        ResponseCurves: {
            /** @description Voltage at the terminals times current */
            apparentPowerVa: number[];
            /** @description With a cabin: level at the seat over half space at 1 m; not in `levelDb` */
            cabinGainDb?: number[];
            /** @description With limits: change of level by the warm coil, an estimate */
            coilCompressionDb?: number[];
            /** @description With limits: level at the given drive with the losses below and no more than the amplifier swings, an estimate */
            compressedLevelDb?: number[];
            /** @description Excursion of one cone, one way, peak; of the first group where there are several */
            coneExcursionMm: number[];
            /** @description Velocity of one cone, RMS */
            coneVelocityMPerS: number[];
            /** @description Current into the drivers, RMS */
            currentA: number[];
            /** @description What the filters alone do; already in every other curve */
            filterGainDb?: number[];
            /** @description Group delay of the filters alone */
            filterGroupDelayMs?: number[];
            /** @description Phase of the filters alone */
            filterPhaseDeg?: number[];
            /** @description Frequencies */
            frequencyHz: number[];
            /** @description Sound pressure in the front chamber, RMS */
            frontChamberPressurePa?: number[];
            /** @description The same for the front chamber */
            frontPassiveRadiatorExcursionMm?: number[];
            /** @description Air speed in a port of the front chamber, peak, mean over its area */
            frontPortAirSpeedMPerS?: number[];
            /** @description With limits: the limit that sine reaches */
            governingLimit?: components["schemas"]["LimitName"][];
            /** @description Group delay, without travel time */
            groupDelayMs: number[];
            /** @description Modulus of the impedance at the terminals of the drivers */
            impedanceOhm: number[];
            /** @description Phase of that impedance; positive: inductive */
            impedancePhaseDeg: number[];
            /** @description Level re 20 µPa at 1 m in half space: cone, ports, radiators and leaks with their phases */
            levelDb: number[];
            /** @description With limits: level of the largest sine that keeps to all of them, before the filters */
            maximumLevelDb?: number[];
            /** @description With limits and a cabin: maximumLevelDb + cabinGainDb */
            maximumSeatLevelDb?: number[];
            /** @description With limits: RMS voltage of that sine at the source */
            maximumVoltageV?: number[];
            /** @description Excursion of a passive radiator of the rear chamber, one way, peak */
            passiveRadiatorExcursionMm?: number[];
            /** @description Phase of the sound pressure against the source, without travel time */
            phaseDeg: number[];
            /** @description With limits: change of level by the jets in the ports, an estimate (±50 %) */
            portCompressionDb?: number[];
            /** @description Sound pressure in the rear chamber, RMS */
            rearChamberPressurePa?: number[];
            /** @description Air speed in a port of the rear chamber, peak, mean over its area */
            rearPortAirSpeedMPerS?: number[];
            /** @description With a cabin: level at the seat, levelDb + cabinGainDb */
            seatLevelDb?: number[];
        };
        /** @description Figures of a response, refined between the frequencies asked for. */
        ResponseScalars: {
            /** @description Compliance ratio of the rear chamber, N·Vas/V [1] */
            alpha?: number;
            /** @description Band-pass kinds: how often it falls through it [1] */
            downwardCrossings?: number;
            /** @description Dips of the excursion, 5 to 400 Hz, ascending */
            excursionMinima: components["schemas"]["ExcursionExtreme"][];
            /** @description Peaks of the excursion, 5 to 400 Hz, ascending */
            excursionPeaks: components["schemas"]["ExcursionExtreme"][];
            /** @description Lowest frequency at which the level rises through half power: of the plateau, or of the peak of a band-pass. Absent: never [Hz] */
            f3Hz?: number;
            /** @description Band-pass kinds: highest frequency at which the level falls through half power [Hz] */
            f3UpperHz?: number;
            /** @description Closed box: resonance of the driver in the box [Hz] */
            fcHz?: number;
            /** @description Compliance ratio of the front chamber [1] */
            frontAlpha?: number;
            /** @description Resonance of a front passive radiator alone [Hz] */
            frontPassiveRadiatorResonanceHz?: number;
            /** @description Air volume as compliant as all front passive radiators [L] */
            frontPassiveRadiatorVasL?: number;
            /** @description Length of a front port with its end corrections [mm] */
            frontPortEffectiveLengthMm?: number;
            frontPortLengths?: components["schemas"]["PortLengthsForTuning"];
            /** @description Tuning of the front chamber with its opening [Hz] */
            frontTuningHz?: number;
            /** @description Dips of the impedance, 3 to 400 Hz, ascending */
            impedanceMinima: components["schemas"]["ImpedanceExtreme"][];
            /** @description Peaks of the impedance, 3 to 400 Hz, ascending */
            impedancePeaks: components["schemas"]["ImpedanceExtreme"][];
            /** @description Resonance of a rear passive radiator alone [Hz] */
            passiveRadiatorResonanceHz?: number;
            /** @description Air volume as compliant as all rear passive radiators [L] */
            passiveRadiatorVasL?: number;
            /** @description Highest level between 3 and 600 Hz [dB] */
            peakLevelDb: number;
            /** @description Where the level is highest [Hz] */
            peakLevelHz: number;
            /** @description Length of a rear port with its end corrections [mm] */
            portEffectiveLengthMm?: number;
            portLengths?: components["schemas"]["PortLengthsForTuning"];
            /** @description Closed box: electrical Q without the source resistance [1] */
            qec?: number;
            /** @description Closed box: mechanical Q without box losses [1] */
            qmc?: number;
            /** @description Closed box: total Q with the source resistance, without inductance and box losses [1] */
            qtc?: number;
            /** @description High-pass kinds: level of the mass-controlled plateau, inductance left out [dB] */
            referenceLevelDb?: number;
            /** @description Tuning of the rear chamber with its opening [Hz] */
            tuningHz?: number;
            /** @description tuningHz over fs [1] */
            tuningRatio?: number;
            /** @description Band-pass kinds: how often the level rises through half power [1] */
            upwardCrossings?: number;
            /** @description Source voltage, RMS [V] */
            voltageV: number;
        };
        /** @description How hard the box must be held in the car. */
        Restraint: {
            /** @description How to fasten it */
            advice: string[];
            /** @description 20 × mass × 9.8 N, a yardstick taken from seat regulations [N] */
            crashForceN: number;
            /** @description Forward force under hard braking [N] */
            drivingForwardN: number;
            /** @description Rearward force [N] */
            drivingRearwardN: number;
            /** @description Sideways force in a bend [N] */
            drivingSidewaysN: number;
            /** @description What one lashing eye was taken to hold [N] */
            eyeStrengthN: number;
            /** @description Mass of the box [kg] */
            massKg: number;
            /** @description Lashing capacity taken for one strap [N] */
            strapCapacityN: number;
            /** @description Lashing straps that hold the crash force at these angles */
            strapCount: number;
            /** @description Steepest strap, against the floor [°] */
            strapSlopeDeg: number;
            /** @description Strap farthest aside from the direction of travel [°] */
            strapSpreadDeg: number;
        };
        /** @description A return conductor of the size of the positive. */
        ReturnCable: {
            /**
             * @description Return by cable (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "cable";
            /** @description Conductor length of the return [m] */
            lengthM: number;
        };
        /** @description The body as return, behind a short ground lead. */
        ReturnChassis: {
            /** @description What the body is made of */
            body?: components["schemas"]["ChassisBody"];
            /**
             * @description Return through the body (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "chassis";
            /** @description Ground lead, of the size of the positive [m] */
            leadLengthM?: number;
            /** @description Body between ground bolt and battery post [Ω] */
            resistanceOhm?: number;
        };
        /** @description The way back, as a return cable or with a measured body. */
        ReturnPatch: {
            /** @description Taken out */
            body?: null;
            /**
             * @description Kind of return
             * @enum {string}
             */
            kind: "cable" | "chassis";
            /** @description Taken out */
            leadLengthM?: null;
            /** @description Return cable [m] */
            lengthM?: number;
            /** @description Measured body, or taken out */
            resistanceOhm?: number | null;
        };
        /** @description The way back to the battery. */
        ReturnPath: components["schemas"]["ReturnCable"] | components["schemas"]["ReturnChassis"];
        /** @description Equal tubes. */
        RoundPort: {
            /** @description Centre of each tube; arranged evenly when absent */
            centres?: components["schemas"]["PlaceOnPanel"][];
            /** @description Chamber of a band-pass box it opens from */
            chamber?: components["schemas"]["ChamberName"];
            /** @description Tubes */
            count?: number;
            /** @description Centre line of one elbow of 90°; straight when absent [mm] */
            elbowRadiusMm?: number;
            /** @description Sum of both end factors, in radii of the circle of equal area; 1.463 when absent [1] */
            endFactor?: number;
            /** @description Face that carries the tubes; the front when absent */
            face?: components["schemas"]["FaceName"];
            /** @description Flange or flare at the inner mouth [mm] */
            flangeDiameterMm?: number;
            /** @description Thickness of that flange [mm] */
            flangeThicknessMm?: number;
            /** @description Bore [mm] */
            innerDiameterMm: number;
            /** @description The part behind the inner face of the panel, instead of the whole length [mm] */
            insideLengthMm?: number;
            /**
             * @description Tubes (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "round";
            /** @description Outer face of the panel to the inner mouth, along the centre line [mm] */
            lengthMm?: number;
            /** @description Outside of the tube; 3 mm of wall when absent [mm] */
            outerDiameterMm?: number;
            /** @description Instead of a length: the tuning it shall give [Hz] */
            tuningHz?: number;
        };
        /** @description Round ports; what is absent is chosen. */
        RoundPortWish: {
            /** @description Equal ports; weighed when absent */
            count?: number;
            /** @description Clear diameter of one [mm] */
            diameterMm?: number;
            /** @description Radius of a rounding at both mouths, part of the length [mm] */
            flareRadiusMm?: number;
            /**
             * @description Shape (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "round";
            /** @description Physical length, to learn the tuning of a port given whole [mm] */
            lengthMm?: number;
        };
        /**
         * @description A space that a cable runs through.
         * @enum {string}
         */
        RunSpace: "engine-bay" | "cabin" | "boot";
        /** @description A schema of JSON Schema 2020-12, `$schema` and `$id` with it, that refers to nothing outside itself. */
        Schema: {
            /** @description Every schema that it leads to, by name */
            $defs: {
                [key: string]: unknown;
            };
        };
        /** @description Holes evenly on a circle. */
        ScrewCircle: {
            /** @description Holes */
            count: number;
            /** @description Circle through the centres of the holes [mm] */
            diameterMm: number;
            /** @description Diameter of the pilots for that screw; a T-nut has them opened to its barrel [mm] */
            holeDiameterMm: number;
            /** @description What goes into the holes, by the mass of the driver; a plan buys the same */
            screw: string;
            /** @description First hole, anticlockwise from u [°] */
            startAngleDeg: number;
        };
        /** @description An amplifier that could be bought. */
        SearchAmplifier: {
            /** @description Channels */
            channels?: number;
            /** @description Class of the output stage; sets efficiency and partial-load law */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Read where the amplifier itself is silent; a figure that contradicts it is refused */
            draw?: components["schemas"]["AmplifierDraw"];
            /** @description Output over input at rated output, from the data sheet; beats the class [1] */
            efficiency?: number;
            /** @description Area it takes where it is mounted [cm²] */
            footprintCm2?: number;
            /** @description Input current at rated output, from the data sheet; beats the class [A] */
            inputCurrentA?: number;
            /** @description Supply voltage of that input current; else ratedVoltageV [V] */
            inputVoltageV?: number;
            /** @description Lowest load of a bridged pair [Ω] */
            minimumBridgedOhm?: number;
            /** @description Lowest load of one channel [Ω] */
            minimumOhm: number;
            /** @description Name, unlike the others */
            name: string;
            /** @description Fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Price, in any one currency [1] */
            price?: number;
            /** @description Idle draw [W] */
            quiescentW?: number;
            /** @description Supply at which the powers are rated, for what the fuses pass [V] */
            ratedVoltageV?: number;
            /** @description What kind of figure each rating is; only `rms` can be matched */
            ratingKind?: components["schemas"]["RatingKind"];
            /** @description Published powers, one a load */
            ratings: components["schemas"]["AmplifierRating"][];
            /**
             * @description Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** @description Draw when switched off [A] */
            standbyA?: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        SearchDesignsAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["DesignSearchResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description A driver that could be bought. powerW and xmaxMm of its sheet are needed. */
        SearchDriver: {
            coils: components["schemas"]["PlanCoils"];
            mounting?: components["schemas"]["DriverMounting"];
            /** @description Name, unlike the others */
            name: string;
            /** @description Price of one, in the currency of the amplifiers [1] */
            price?: number;
            /** @description Its data sheet; powerW is the continuous RMS rating and is needed here */
            sheet: components["schemas"]["DriverSheet"];
        };
        /** @description How ports are sized, as in a plan. */
        SearchPort: {
            /** @description Peak air speed it is sized for; 17, 25 and 30 are tried in turn when absent [m/s] */
            airSpeedMPerS?: number;
            /** @description Shape of the port; both are tried when absent */
            shape?: components["schemas"]["PortShape"];
        };
        /** @description A second battery. */
        SecondBatteryPatch: {
            /**
             * @description How it is tied
             * @enum {string}
             */
            arrangement: "isolated";
            /** @description Capacity [A·h] */
            capacityAh: number;
            /** @description Kind */
            chemistry: components["schemas"]["BatteryChemistry"];
        };
        /** @description A further battery for the music. */
        SecondBatteryRequest: {
            /**
             * @description `isolated` feeds the amplifiers alone when the engine is off; `parallel` joins the first, of the same chemistry
             * @enum {string}
             */
            arrangement: "isolated" | "parallel";
            /** @description Capacity of the bank at the rated hours [A·h] */
            capacityAh: number;
            /** @description Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** @description Cold cranking current at −18 °C [A] */
            coldCrankingA?: number;
            /** @description Peukert exponent [1] */
            peukertExponent?: number;
            /** @description Hours the capacity is printed for [h] */
            ratedHours?: number;
            /** @description Reserve capacity: minutes at 25 A to 10.5 V; gives the exponent [min] */
            reserveMinutes?: number;
            /** @description Internal resistance of the bank [Ω] */
            resistanceOhm?: number;
            /** @description Share of the time to empty that may be used [1] */
            usableFraction?: number;
        };
        /** @description A quick approximation beside the exact solution. */
        SecondOpinion: {
            /** @description Half power [Hz] */
            f3Hz: number;
            /** @description Where it comes from */
            method: string;
            /** @description Net volume [L] */
            netVolumeL: number;
            /** @description Tuning [Hz] */
            tuningHz: number;
        };
        /** @description What one parameter does to one figure, all others as printed. */
        Sensitivity: {
            /** @description Change of the figure for one standard deviation of the parameter [%] */
            effectPercent: number;
            /** @description Relative change of the figure for a relative change of the parameter [1] */
            elasticity: number;
            /**
             * @description The figure
             * @enum {string}
             */
            figure: "f3" | "f3-upper" | "tuning" | "front-tuning" | "closed-resonance" | "driver-resonance" | "driver-total-q" | "peak-excursion" | "peak-air-speed" | "minimum-impedance";
            /**
             * @description The parameter
             * @enum {string}
             */
            parameter: "coil-resistance" | "force-factor" | "moving-mass" | "suspension-compliance" | "suspension-resistance" | "cone-area" | "coil-inductance" | "rear-volume" | "rear-port-length" | "rear-port-area" | "rear-radiator-mass" | "rear-radiator-compliance" | "rear-losses" | "front-volume" | "front-port-length" | "front-port-area" | "front-radiator-mass" | "front-radiator-compliance" | "front-losses" | "air-temperature";
            /** @description Part of the variance of the figure, to first order [%] */
            sharePercent: number;
            /** @description Of the parameter; of the absolute temperature [%] */
            standardDeviationPercent: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        SetUpSignalAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["SignalSetupResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/signal/setup gives. */
        SetUpSignalDone: {
            answer: components["schemas"]["SetUpSignalAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["SignalSetupRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/signal/setup gives, or why not. */
        SetUpSignalPart: components["schemas"]["SetUpSignalDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description The voice coils of the driver and the connection the sheet speaks of. */
        SheetCoils: {
            /**
             * @description Voice coils of the driver
             * @enum {integer}
             */
            count: 1 | 2 | 4;
            /** @description Connection that Re of the sheet belongs to */
            resistanceStatedFor?: components["schemas"]["CoilConnection"];
            /** @description Connection that Bl, Q and Le of the sheet belong to */
            statedFor?: components["schemas"]["CoilConnection"];
            /** @description Connection the answer is for */
            wanted?: components["schemas"]["CoilConnection"];
        };
        /** @description One cut from edge to edge of a part. Do them in the order of their steps. */
        SheetCut: {
            /**
             * @description Direction in which the saw runs on the sheet
             * @enum {string}
             */
            along: "length" | "width";
            /** @description Near side of the kerf, from the corner of the raw sheet [mm] */
            atMm: number;
            /** @description Length of the cut [m] */
            cutLengthM: number;
            /** @description Fence setting: size of the near part; the kerf lies beyond it [mm] */
            distanceMm: number;
            /** @description The part beyond the blade; absent when only dust is left */
            far?: components["schemas"]["FreedPart"];
            /** @description Start of the cut, from the corner of the raw sheet [mm] */
            fromMm: number;
            /** @description The part between fence and blade */
            near: components["schemas"]["FreedPart"];
            /** @description Number of the part to cut; 1 is the trimmed sheet */
            part: number;
            /** @description Order of sawing on this sheet, from 1, after trimming */
            step: number;
            /** @description End of the cut, from the corner of the raw sheet [mm] */
            toMm: number;
        };
        /** @description One sheet with what is cut from it. */
        SheetLayout: {
            /** @description Cuts in order */
            cuts: components["schemas"]["SheetCut"][];
            /** @description Length of the raw sheet, along the grain where it has one [mm] */
            lengthMm: number;
            /** @description Material */
            material?: string;
            /** @description Number of the sheet in the plan, from 1 */
            number: number;
            /** @description What is left over, the largest first */
            offcuts: components["schemas"]["SheetOffcut"][];
            /** @description Panels on this sheet */
            pieces: components["schemas"]["LaidPiece"][];
            /** @description Name of the sheet */
            sheet: string;
            /** @description Thickness [mm] */
            thicknessMm: number;
            /** @description Trimmed off every edge [mm] */
            trimMm: number;
            /** @description Share of the raw sheet that becomes panels [%] */
            usedPercent: number;
            /** @description Width of the raw sheet [mm] */
            widthMm: number;
        };
        /** @description A part that is left over. */
        SheetOffcut: {
            /** @description Size along the length of the sheet [mm] */
            lengthMm: number;
            /** @description Both sides reach `keepOffcutMm` */
            reusable: boolean;
            /** @description Size along the width of the sheet [mm] */
            widthMm: number;
            /** @description From the corner of the raw sheet along its length [mm] */
            xMm: number;
            /** @description From the corner of the raw sheet along its width [mm] */
            yMm: number;
        };
        /** @description Equal panels to be cut. */
        SheetPanel: {
            /** @description Side of the panel that the grain follows; `any` (the default) lets it turn */
            grain?: components["schemas"]["PanelGrain"];
            /** @description Length of the blank [mm] */
            lengthMm: number;
            /** @description Material, as the sheets name it */
            material?: string;
            /** @description Name of the panel, as it shall stand on the cut sheet */
            name: string;
            /** @description How many */
            quantity: number;
            /** @description Nominal thickness of the board [mm] */
            thicknessMm: number;
            /** @description Width of the blank [mm] */
            widthMm: number;
        };
        /** @description Panels to be cut, and the sheets to be had. */
        SheetPlanRequest: {
            /** @description Shorter side of an offcut worth keeping [mm] */
            keepOffcutMm?: number;
            /** @description Width of the saw cut [mm] */
            kerfMm?: number;
            /** @description Panels */
            panels: components["schemas"]["SheetPanel"][];
            /** @description Sheets */
            sheets: components["schemas"]["SheetStock"][];
            /** @description Cut off every edge of a raw sheet first, kerf included [mm] */
            trimMm?: number;
        };
        /** @description A cut plan. */
        SheetPlanResult: {
            /** @description One entry for each material and thickness */
            boards: components["schemas"]["BoardSummary"][];
            /** @description The sheets in the order of their numbers */
            layouts: components["schemas"]["SheetLayout"][];
            total: components["schemas"]["SheetPlanTotal"];
        };
        /** @description The whole plan in figures. */
        SheetPlanTotal: {
            /** @description Cuts, without trimming */
            cutCount: number;
            /** @description Length of all cuts, without trimming [m] */
            cutLengthM: number;
            /** @description Area of the panels [m²] */
            panelAreaM2: number;
            /** @description Panels */
            panelCount: number;
            /** @description Price of the sheets; absent when a sheet used has none [1] */
            price?: number;
            /** @description Area of the sheets [m²] */
            sheetAreaM2: number;
            /** @description Sheets */
            sheetCount: number;
            /** @description The rest when offcuts worth keeping are not counted as lost [%] */
            wasteAfterOffcutsPercent: number;
            /** @description The rest [%] */
            wastePercent: number;
            /** @description Panels as a share of the sheets [%] */
            yieldPercent: number;
        };
        /** @description Equal sheets to cut from. */
        SheetStock: {
            /**
             * @description Side of the sheet that the grain follows, `length` by default; `none` for board without grain
             * @enum {string}
             */
            grain?: "length" | "width" | "none";
            /** @description Length of the raw sheet [mm] */
            lengthMm: number;
            /** @description Material */
            material?: string;
            /** @description Name of the sheet */
            name: string;
            /** @description Price of one sheet, in one currency for all [1] */
            price?: number;
            /** @description Sheets to be had; as many as needed when absent */
            quantity?: number;
            /** @description Nominal thickness of the board [mm] */
            thicknessMm: number;
            /** @description Width of the raw sheet [mm] */
            widthMm: number;
        };
        /** @description The stated short circuit. */
        ShortCircuitAnswer: {
            /** @description Short-circuit constant [A·√s/mm²] */
            k: number;
            /** @description I²·t of the fault [A²·s] */
            letThroughA2s: number;
            /** @description Least section [mm²] */
            minimumAreaMm2: number;
            /** @description The chosen size first, then the others */
            sizes: components["schemas"]["ShortCircuitSize"][];
        };
        /** @description A short circuit the conductor must survive. */
        ShortCircuitRequest: {
            /** @description Fault current [A] */
            currentA: number;
            /** @description How long it flows [s] */
            durationS: number;
            /** @description What the insulation survives once [°C] */
            endC?: number;
            /** @description Heat capacity of the metal by volume; k then follows from the metal, else from the standard’s K [J/(m³·K)] */
            heatCapacityJPerM3K?: number;
            /** @description Conductor before the fault [°C] */
            startC?: number;
        };
        /** @description A size under the stated short circuit. */
        ShortCircuitSize: {
            /** @description Size with its series */
            designation: string;
            /** @description What current it survives for the duration [A] */
            survivesA: number;
            /** @description How long it survives the current [s] */
            survivesS: number;
            /** @description k²·S² [A²·s] */
            withstandA2s: number;
            /** @description It survives both */
            withstands: boolean;
        };
        /** @description The output whose gain is set. */
        SignalAmplifier: {
            /** @description Whether the output is a bridged pair of channels */
            bridged?: boolean;
            input?: components["schemas"]["SignalInput"];
            /** @description Load that is wired [Ω] */
            loadOhm: number;
            /** @description Continuous RMS power into loadOhm [W] */
            powerW: number;
            /** @description What kind of figure powerW is; only `rms` is taken */
            ratingKind?: components["schemas"]["RatingKind"];
        };
        /** @description The corners wanted, or what they can be derived from. */
        SignalFilters: {
            acoustic?: components["schemas"]["AcousticFacts"];
            /** @description Protective high-pass */
            highPass?: components["schemas"]["FilterCorner"];
            lowPass?: components["schemas"]["FilterCorner"];
        };
        /** @description The band of the subwoofer. */
        SignalFiltersSet: {
            /** @description Protective high-pass; absent when nothing says where it belongs */
            highPass?: components["schemas"]["FilterCornerSet"];
            lowPass: components["schemas"]["FilterCornerSet"];
        };
        /** @description The amplifier's input. */
        SignalInput: {
            /** @description Whether the input is differential or isolated */
            differential?: boolean;
            /** @description Highest input voltage its gain control covers [V] */
            highestV?: number;
            /** @description Input resistance [Ω] */
            inputOhm?: number;
            /** @description Lowest input voltage at which it can give full output [V] */
            lowestV?: number;
            /** @description Highest voltage of its speaker-level input; absent: it has none [V] */
            speakerLevelV?: number;
        };
        /** @description What reaches the amplifier's input. */
        SignalInputLevel: {
            /**
             * @description How the source is connected
             * @enum {string}
             */
            connection: "line" | "speaker-level-input" | "line-output-converter" | "digital-converter";
            /** @description What the line-output converter takes away [dB] */
            converterDb?: number;
            /** @description Resistance of all inputs on the line [Ω] */
            inputOhm?: number;
            /** @description At the amplifier's input [V] */
            levelV: number;
            /** @description Loss into the inputs [dB] */
            loadingDb?: number;
            /** @description Output resistance it comes from [Ω] */
            outputOhm?: number;
            /** @description At the output of the source [V] */
            sourceV: number;
            /** @description Why this way */
            why: string;
        };
        /** @description The way from the music source to one amplifier output. */
        SignalSetupRequest: {
            amplifier: components["schemas"]["SignalAmplifier"];
            /** @description Line level a line-output converter is set to [V] */
            converterLineV?: number;
            /** @description Sum of the continuous ratings of the drivers on this output [W] */
            driversPowerW?: number;
            filters?: components["schemas"]["SignalFilters"];
            /** @description Power of this output the gain shall be set for, where it is less than amplifier and drivers bear [W] */
            gainPowerW?: number;
            /** @description Amplifier inputs on one line output */
            inputsInParallel?: number;
            source?: components["schemas"]["SignalSource"];
            /** @description Nominal voltage of the vehicle, 12, 24 or 48 [V] */
            systemVoltageV?: number;
            tone?: components["schemas"]["TestTone"];
            turnOn?: components["schemas"]["TurnOnRequest"];
        };
        /** @description The way of the signal, and the first switching-on. */
        SignalSetupResult: {
            filters: components["schemas"]["SignalFiltersSet"];
            gain: components["schemas"]["GainSetting"];
            /** @description Absent without a source */
            input?: components["schemas"]["SignalInputLevel"];
            /** @description Levels from source to loudspeaker; absent without a source */
            path?: components["schemas"]["SignalStage"][];
            /** @description In this order */
            steps: components["schemas"]["SignalStep"][];
            /** @description Absent when not asked for */
            turnOn?: components["schemas"]["TurnOn"];
        };
        /** @description Where the signal comes from. */
        SignalSource: components["schemas"]["LineLevelSource"] | components["schemas"]["SpeakerLevelSource"] | components["schemas"]["DigitalSource"];
        /** @description One place on the way of the signal. */
        SignalStage: {
            /** @description RMS at full level [V] */
            levelV: number;
            /** @description The place */
            stage: string;
        };
        /** @description One step of the first switching-on. */
        SignalStep: {
            /** @description What to mind; /v1/cautions documents each */
            cautions: components["schemas"]["CautionCode"][];
            /**
             * @description Which step
             * @enum {string}
             */
            id: "start-safe" | "speaker-resistance" | "cone-polarity" | "turn-on" | "source-level" | "speakers-off" | "gain" | "bridge-halves" | "clipping" | "speakers-on" | "filters" | "acoustic-polarity" | "level" | "warm-check";
            /** @description What must be seen before the next step */
            passIf: string;
            /** @description What to do */
            text: string;
        };
        /** @description Passive radiators that give the tuning. */
        SizedPassiveRadiators: {
            /** @description Effective area of one [cm²] */
            areaCm2: number;
            /** @description Compliance of one [mm/N] */
            complianceMmPerN: number;
            /** @description Units */
            count: number;
            /** @description Compliance of all radiators over that of the box [1] */
            delta: number;
            /** @description One way, to move twice what the drivers sweep at Xmax [mm] */
            excursionMm?: number;
            /** @description Moving mass of one, air load and added weight in it [g] */
            massG: number;
            /** @description Free resonance of one so loaded: the notch of the response [Hz] */
            resonanceHz: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        SizeEnclosureAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["EnclosureSizingResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/enclosures/sizing gives. */
        SizeEnclosureDone: {
            answer: components["schemas"]["SizeEnclosureAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["EnclosureSizingRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/enclosures/sizing gives, or why not. */
        SizeEnclosurePart: components["schemas"]["SizeEnclosureDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description Result with its cautions, assumed defaults and sources. */
        SizePortAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["PortSizingResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/ports/sizing gives. */
        SizePortDone: {
            answer: components["schemas"]["SizePortAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["PortSizingRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/ports/sizing gives, or why not. */
        SizePortPart: components["schemas"]["SizePortDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description What fuse and cable are sized for: every amplifier at the voltage at which it draws most. */
        SizingCurrents: {
            /** @description Test tone at rated output [A] */
            fullSineA: number;
            /** @description Dense bass, 1/3 of rated output [A] */
            heavyA: number;
        };
        /** @description Fibre in the box. */
        SizingLining: {
            /**
             * @description `bare`, `walls` lined, or `filled`
             * @enum {string}
             */
            amount: "bare" | "walls" | "filled";
            /** @description Apparent over actual volume; isothermal air sets the bound [1] */
            volumeFactor?: number;
        };
        /** @description Losses of the box, each a Q at its tuning or resonance. */
        SizingLosses: {
            /** @description Absorption in the air and its lining [1] */
            absorptionQ?: number;
            /** @description Leakage; 7 is assumed for opened boxes, none for closed ones [1] */
            leakQ?: number;
            /** @description Friction in the port [1] */
            portQ?: number;
        };
        /** @description Passive radiators at hand; what is absent is chosen. */
        SizingPassiveRadiators: {
            /** @description Effective area of one [cm²] */
            areaCm2?: number;
            /** @description Compliance of one [mm/N] */
            complianceMmPerN?: number;
            /** @description Units */
            count?: number;
            /** @description Mechanical Q of one in free air [1] */
            qm?: number;
        };
        /** @description What lies before the drivers. */
        SizingSource: {
            /** @description Resistance of amplifier and cable before the drivers [Ω] */
            seriesOhm?: number;
        };
        /** @description Room there is. */
        SizingSpace: {
            /** @description Largest air volume [L] */
            netVolumeL: number;
        };
        /** @description What the box should come out as; whatever is absent is chosen. */
        SizingWanted: {
            /** @description Upper half-power edge of a band-pass [Hz] */
            highHz?: number;
            /** @description Lower half-power edge of a band-pass [Hz] */
            lowHz?: number;
            /** @description A volume to be judged as it is [L] */
            netVolumeL?: number;
            /** @description Total Q of closed boxes to offer */
            qtc?: number[];
            /** @description A tuning to be judged as it is [Hz] */
            tuningHz?: number;
        };
        /** @description A slot along the walls of the box. */
        SlotPort: {
            /**
             * @description Wall it starts on, folding on round the box as its length needs; the floor when absent
             * @enum {string}
             */
            along?: "bottom" | "top" | "left" | "right";
            /** @description Sum of both end factors, in radii of the circle of equal area; 1.463 when absent [1] */
            endFactor?: number;
            /** @description Smaller side of the opening [mm] */
            heightMm: number;
            /**
             * @description Slot (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "slot";
            /** @description Outer face of the front to the inner mouth, along the centre line [mm] */
            lengthMm?: number;
            /** @description Instead of a length: the tuning it shall give [Hz] */
            tuningHz?: number;
            /** @description Board of its own walls; that of the box when absent [mm] */
            wallThicknessMm?: number;
            /** @description Across the opening; the clear width of the box when absent [mm] */
            widthMm?: number;
        };
        /** @description Slots; what is absent is chosen. */
        SlotPortWish: {
            /** @description Clear height of the box where a full-width slot ends, the slot in it [mm] */
            chamberHeightMm?: number;
            /** @description Equal ports; weighed when absent */
            count?: number;
            /** @description Clear height [mm] */
            heightMm?: number;
            /**
             * @description Shape (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "slot";
            /** @description Physical length, to learn the tuning of a port given whole [mm] */
            lengthMm?: number;
            /** @description `own` walls all round, `one-shared` with the box, or `full-width`: three of the walls are the box */
            walls?: components["schemas"]["SlotWalls"];
            /** @description Clear width of one: the inner width of the box for a full-width slot [mm] */
            widthMm: number;
        };
        /**
         * @description Which walls a slot has of its own.
         * @enum {string}
         */
        SlotWalls: "own" | "one-shared" | "full-width";
        /** @description What feeds the drivers: a voltage, or the power it would give. */
        Source: {
            /** @description Load at which the power is meant [Ω] */
            loadOhm?: number;
            /** @description In place of the voltage: power into `loadOhm` [W] */
            powerW?: number;
            /** @description Resistance of amplifier and cable before the drivers [Ω] */
            seriesOhm?: number;
            /** @description RMS voltage over the whole group of drivers, before the series resistance [V] */
            voltageV?: number;
        };
        /** @description Id of a source; /v1/reference/sources gives each. More may come with any version; take what you do not know as it is. */
        SourceId: string;
        /** @description A publication or practice that figures rest on. */
        SourceRow: {
            /** @description Id, as in `sources` of an answer */
            id: string;
            /**
             * @description `read`: text seen. `second-hand`: quoted in a text that was seen. `from memory`: recalled. `derived`: follows from stated equations. `practice`: common practice, no source. `ours`: an engineering choice of this service.
             * @enum {string}
             */
            status: "read" | "second-hand" | "from memory" | "derived" | "practice" | "ours";
            /** @description Author, title, place and year */
            title: string;
        };
        /** @description Sources of the figures */
        SourcesTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["SourceRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What a candidate costs in space. */
        SpaceCost: {
            /** @description Outer volume as a cube of 18 mm board, driver, port and braces in it [L] */
            roughOuterL: number;
            /** @description Air volume over that of the smallest candidate [1] */
            timesSmallest: number;
        };
        /** @description A loudspeaker cable and what its resistance does. */
        SpeakerCable: {
            /** @description Current the cable carries for good; absent outside the table [A] */
            ampacityA?: number;
            /** @description Conductor section [mm²] */
            areaMm2: number;
            /** @description RMS current at full sine [A] */
            currentA: number;
            /** @description Damping factor at the load, cable included [1] */
            dampingFactor?: number;
            /** @description Size with its series */
            designation: string;
            /**
             * @description The limit this size breaks; absent when it passes
             * @enum {string}
             */
            fails?: "resistance" | "ampacity";
            /**
             * @description The limit that ruled out the next smaller size
             * @enum {string}
             */
            governedBy?: "resistance" | "ampacity" | "smallest-size";
            /** @description Resistance there and back at 20 °C [Ω] */
            loopOhm: number;
            /** @description Level against a cable without resistance [dB] */
            lossDb: number;
            /** @description Qes with cable and output resistance [1] */
            qes?: number;
            /** @description Qes with cable and output resistance over Qes without [1] */
            qesFactor?: number;
            /** @description Share of the load [%] */
            resistancePercent: number;
            /** @description Cable, and the output of the amplifier where its damping factor is given: the acoustic calculation takes it as `source.seriesOhm` [Ω] */
            sourceSeriesOhm: number;
        };
        /** @description A size that was considered. */
        SpeakerCableCandidate: {
            /** @description Current the cable carries for good; absent outside the table [A] */
            ampacityA?: number;
            /** @description Size with its series */
            designation: string;
            /**
             * @description The limit this size breaks; absent when it passes
             * @enum {string}
             */
            fails?: "resistance" | "ampacity";
            /** @description Resistance there and back at 20 °C [Ω] */
            loopOhm: number;
            /** @description Share of the load [%] */
            resistancePercent: number;
        };
        /** @description The cable from an amplifier to its load. */
        SpeakerCableRequest: {
            /** @description Surroundings of the cable [°C] */
            ambientC?: number;
            /** @description Damping factor of the data sheet at this load [1] */
            amplifierDampingFactor?: number;
            /** @description Metal; `unknown` is worked out as 10 % copper-clad aluminium */
            conductor?: components["schemas"]["Conductor"];
            /** @description A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
            designation?: string;
            /** @description Temperature class of the insulation [°C] */
            insulationC?: number;
            /** @description Way from the amplifier to the box; both conductors are counted [m] */
            lengthM: number;
            /** @description Electrical Q of the drivers, needs reOhm [1] */
            qes?: number;
            /** @description Direct-current resistance of the whole load, for the effect on Qes [Ω] */
            reOhm?: number;
            /** @description Most of the load that may be in the wire [%] */
            resistanceLimitPercent?: number;
            /** @description Resistance over that of a solid conductor [1] */
            strandingFactor?: number;
        };
        /** @description A loudspeaker output: levelV, or powerW with loadOhm. */
        SpeakerLevelSource: {
            /** @description Whether both wires rest at half the supply */
            bridgeTied?: boolean;
            /** @description The source is the vehicle's own and may equalise, delay and roll off */
            factory?: boolean;
            /**
             * @description Kind of source (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "speaker-level";
            /** @description Highest undistorted RMS output [V] */
            levelV?: number;
            /** @description Loudspeaker it is rated for [Ω] */
            loadOhm?: number;
            /** @description Continuous power of one output [W] */
            powerW?: number;
        };
        /** @description How a speed scatters. */
        SpeedSpread: {
            /** @description Mean of the samples [m/s] */
            meanMPerS: number;
            /** @description With every part as printed [m/s] */
            nominalMPerS: number;
            /** @description At each percentile asked for, in its order */
            percentilesMPerS: number[];
            /** @description Standard deviation of the samples [m/s] */
            standardDeviationMPerS: number;
        };
        /** @description One standard deviation of each physical parameter. fs, Q and Vas follow from these and are never varied apart. */
        Spread: {
            /** @description One standard deviation of the force factor [%] */
            blPercent?: number;
            /** @description One standard deviation of the compliance of the suspension [%] */
            cmsPercent?: number;
            /** @description One standard deviation of the inductance of the coil [%] */
            lePercent?: number;
            /** @description One standard deviation of the loss Qs of each chamber [%] */
            lossPercent?: number;
            /** @description One standard deviation of the moving mass [%] */
            mmsPercent?: number;
            /** @description One standard deviation of the area of the ports [%] */
            portAreaPercent?: number;
            /** @description One standard deviation of the length of the ports [%] */
            portLengthPercent?: number;
            /** @description One standard deviation of their compliance [%] */
            radiatorCompliancePercent?: number;
            /** @description One standard deviation of the mass of the passive radiators [%] */
            radiatorMassPercent?: number;
            /** @description One standard deviation of the DC resistance of the coil [%] */
            rePercent?: number;
            /** @description One standard deviation of the mechanical resistance [%] */
            rmsPercent?: number;
            /** @description One standard deviation of the area of the cone [%] */
            sdPercent?: number;
            /** @description One standard deviation of the air temperature [K] */
            temperatureK?: number;
            /** @description One standard deviation of the volume of each chamber [%] */
            volumePercent?: number;
        };
        /** @description Resistance of a stretch by part. */
        StageParts: {
            /** @description Body [Ω] */
            chassis: number;
            /** @description Fuse [Ω] */
            fuse: number;
            /** @description Lugs, rings, contacts [Ω] */
            joints: number;
            /** @description Stated beside [Ω] */
            other: number;
            /** @description Positive conductor [Ω] */
            positive: number;
            /** @description Return conductor or ground lead [Ω] */
            return: number;
        };
        /** @description One stretch, solved. */
        StageResult: {
            /** @description Current all runs may carry [A] */
            ampacityA?: number;
            /** @description Conductor at this load for good, estimated [°C] */
            conductorC?: number;
            /** @description Current [A] */
            currentA?: number;
            /** @description Drop over it [V] */
            dropV?: number;
            /** @description Fuse of each run [A] */
            fuseRatingA?: number;
            /** @description Heat in it [W] */
            lossW?: number;
            parts: components["schemas"]["StageParts"];
            /** @description All of it, at the conductor’s temperature [Ω] */
            resistanceOhm: number;
        };
        /** @description A step of the work by its title. */
        StepLine: {
            /** @description Place in the order, from 1 */
            number: number;
            /** @description The step in a few words */
            title: string;
        };
        /** @description An amplifier as the supply sees it. Needs a power, and its class, efficiency or input current. */
        SupplyAmplifier: {
            /** @description Class of the output stage; sets efficiency and partial-load law */
            class?: components["schemas"]["AmplifierClass"];
            /** @description Output over input at rated output, from the data sheet; beats the class [1] */
            efficiency?: number;
            /** @description Input current at rated output, from the data sheet; beats the class [A] */
            inputCurrentA?: number;
            /** @description Supply voltage of that input current; else ratedVoltageV [V] */
            inputVoltageV?: number;
            /** @description Load wired to it: one of the ratings, or above one, whose draw then bounds it [Ω] */
            loadOhm?: number;
            /** @description Name for the answer */
            name?: string;
            /** @description Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** @description Continuous RMS output of all driven channels into the wired load; or give ratings and loadOhm [W] */
            powerW?: number;
            /** @description Draw at silence, switched on [W] */
            quiescentW?: number;
            /** @description What the power stands for; peak figures are refused */
            ratedAs?: components["schemas"]["RatedPower"];
            /** @description Supply voltage of the power rating [V] */
            ratedVoltageV?: number;
            /** @description Published outputs by load */
            ratings?: components["schemas"]["AmplifierLoadRating"][];
            /**
             * @description Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** @description Draw when switched off [A] */
            standbyA?: number;
        };
        /** @description Amplifiers on one supply. */
        SupplyCurrentRequest: {
            /** @description Amplifiers fed from this supply */
            amplifiers: components["schemas"]["SupplyAmplifier"][];
            battery?: components["schemas"]["BatteryRequest"];
            capacitor?: components["schemas"]["CapacitorRequest"];
            charging?: components["schemas"]["ChargingRequest"];
            /** @description What drives the vehicle; `mild-hybrid` is a 48 V one without orange cables */
            drive?: components["schemas"]["VehicleDrive"];
            secondBattery?: components["schemas"]["SecondBatteryRequest"];
            /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
            systemVoltageV: number;
        };
        /** @description Currents and what they ask of the vehicle. */
        SupplyCurrentResult: {
            /** @description Each amplifier in the order of the request */
            amplifiers: components["schemas"]["AmplifierCurrents"][];
            capacitor?: components["schemas"]["CapacitorEffect"];
            charging?: components["schemas"]["ChargingBalance"];
            currents: components["schemas"]["SupplyCurrents"];
            /** @description Absent for batteries of unlike chemistry in parallel: they are no bank */
            engineOff?: components["schemas"]["EngineOff"];
            sizing: components["schemas"]["SizingCurrents"];
        };
        /** @description The four currents at system voltage, and the ripple. */
        SupplyCurrents: {
            /** @description Ordinary music, 1/8 of rated output: battery and alternator [A] */
            averageA: number;
            /** @description Test tone at rated output: fuse, cable, collapse [A] */
            fullSineA: number;
            /** @description Dense bass, 1/3 of rated output: battery, alternator, fuse heating [A] */
            heavyA: number;
            /** @description Ripple peak of the full sine without energy storage [A] */
            peakNoStorageA: number;
            /** @description At silence, switched on [A] */
            quiescentA: number;
            /** @description RMS of that ripple [A] */
            rippleRmsA: number;
        };
        /** @description Fields of the supply. */
        SupplyPatch: {
            /** @description The charging system. */
            charging?: {
                /** @description Rated output [A] */
                ratedA: number;
            };
            /** @description Metal */
            conductor?: components["schemas"]["Conductor"];
            /** @description Largest drop, of nominal voltage [%] */
            dropLimitPercent?: number;
            /** @description Class printed on the insulation [°C] */
            insulationC?: number;
            return?: components["schemas"]["ReturnPatch"];
            secondBattery?: components["schemas"]["SecondBatteryPatch"];
        };
        /** @description What a box is and does, at the voltage the gain is set to. */
        SystemFigures: {
            /** @description Largest air speed in the port, peak [m/s] */
            airSpeedMPerS?: number;
            /** @description Half power [Hz] */
            f3Hz?: number;
            /** @description Power of all outputs that the gain is set for [W] */
            gainPowerW: number;
            /** @description Longest group delay at those frequencies [ms] */
            groupDelayMs: number;
            /**
             * @description Where the level is counted
             * @enum {string}
             */
            heardAt: "seat" | "half-space";
            /** @description Kind of box */
            kind: components["schemas"]["BoxKind"];
            /** @description At 25, 31.5, 40, 50 and 63 Hz, held back where a limit of the parts would be passed */
            levelDb: number[];
            /** @description Box with its drivers [kg] */
            massKg: number;
            /** @description Air in the box [L] */
            netVolumeL: number;
            /** @description Space the box takes [L] */
            outerVolumeL: number;
            /** @description Tuning of a vented box [Hz] */
            tuningHz?: number;
        };
        /** @description The cup for the wires; a round hole of 76 mm when no size is given. */
        TerminalCup: {
            centre?: components["schemas"]["PlaceOnPanel"];
            /** @description Of a round cut-out [mm] */
            cutOutDiameterMm?: number;
            /** @description Of a rectangular cut-out [mm] */
            cutOutHeightMm?: number;
            /** @description Of a rectangular cut-out [mm] */
            cutOutWidthMm?: number;
            /** @description Face that carries it; the back when absent */
            face?: components["schemas"]["FaceName"];
            /** @description Behind the inner face of its panel [L] */
            volumeL?: number;
        };
        /** @description One terminal number. */
        TerminalRow: {
            /**
             * @description How the row is known
             * @enum {string}
             */
            knownFrom: "reprint" | "memory";
            /** @description What it carries */
            meaning: string;
            /** @description Standard it is from */
            standard: string;
            /** @description Number, as stamped or printed */
            terminal: string;
        };
        /** @description Terminal numbers of vehicle wiring */
        TerminalsTable: {
            /** @description What the table holds and how far it holds */
            description: string;
            /** @description In the order of the published table */
            rows: components["schemas"]["TerminalRow"][];
            /** @description Where it was published; see /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description The test tone and what is allowed past it. */
        TestTone: {
            /** @description Boost that is switched on after the setting [dB] */
            boostDb?: number;
            /** @description Frequency of the tone [Hz] */
            frequencyHz?: number;
            /** @description Level of the tone against full scale [dB] */
            levelDb?: number;
            /** @description Allowance for quiet recordings: they come louder, and loud ones clip [dB] */
            quietRecordingDb?: number;
        };
        /** @description Sound pressure after a step and an impulse of the source, over the pressure of the plateau (high-pass kinds) or of the highest level (others). Arrays of equal length. */
        TimeResponse: {
            /** @description Pressure after an impulse, without the impulse itself at zero */
            impulsePerS: number[];
            /** @description What the step response jumps to at once; 0 behind an inductance [1] */
            jumpRatio: number;
            /** @description Largest swing to the other side after the peak, over the peak [1] */
            overshootRatio: number;
            /** @description Largest value of the step response [1] */
            peakRatio: number;
            /** @description When it is reached [ms] */
            peakTimeMs: number;
            /** @description From here on the step response stays within 5 % of its peak. Absent: not within the time followed [ms] */
            settlingTimeMs?: number;
            /** @description Pressure after a step of the source */
            stepRatio: number[];
            /** @description Moments */
            timeMs: number[];
        };
        /** @description Asks for the step and impulse response. */
        TimeResponseRequest: {
            /** @description How long to follow it [ms] */
            durationMs?: number;
            /** @description Moments, equally spaced, the first at zero */
            points?: number;
        };
        /** @description Each value is that percentile of all samples at that frequency. */
        ToleranceBand: {
            /** @description Excursion of one cone, one way, peak */
            coneExcursionMm: number[];
            /** @description Modulus of the impedance */
            impedanceOhm: number[];
            /** @description Level re 20 µPa at 1 m in half space */
            levelDb: number[];
            /** @description Percentile [%] */
            percent: number;
        };
        /** @description How the figures scatter; absent where the system has no such figure. */
        ToleranceFigures: {
            /** @description Resonance of the driver in its closed rear chamber */
            closedResonance?: components["schemas"]["FrequencySpread"];
            /** @description fs of the driver */
            driverResonance?: components["schemas"]["FrequencySpread"];
            /** @description Qts of the driver */
            driverTotalQ?: components["schemas"]["PureSpread"];
            /** @description Lowest half-power frequency */
            f3?: components["schemas"]["FrequencySpread"];
            /** @description Band-pass kinds: highest half-power frequency */
            f3Upper?: components["schemas"]["FrequencySpread"];
            /** @description Tuning of the front chamber */
            frontTuning?: components["schemas"]["FrequencySpread"];
            /** @description Lowest impedance over the frequencies */
            minimumImpedance?: components["schemas"]["ResistanceSpread"];
            /** @description Largest air speed in a port over the frequencies, peak */
            peakAirSpeed?: components["schemas"]["SpeedSpread"];
            /** @description Largest excursion over the frequencies, one way, peak */
            peakExcursion?: components["schemas"]["TravelSpread"];
            /** @description Tuning of the rear chamber */
            tuning?: components["schemas"]["FrequencySpread"];
        };
        /** @description The test tone the gain is set with. */
        ToneLevel: {
            /** @description Level of the tone against full scale [dB] */
            levelDb?: number;
            /** @description Allowance for quiet recordings: they come louder, and loud ones clip [dB] */
            quietRecordingDb?: number;
        };
        /** @description How a travel scatters. */
        TravelSpread: {
            /** @description Mean of the samples [mm] */
            meanMm: number;
            /** @description With every part as printed [mm] */
            nominalMm: number;
            /** @description At each percentile asked for, in its order */
            percentilesMm: number[];
            /** @description Standard deviation of the samples [mm] */
            standardDeviationMm: number;
        };
        /** @description How the amplifiers are turned on. */
        TurnOn: {
            /** @description What the switched output may deliver [A] */
            limitA?: number;
            /** @description Turn-on current of all inputs [A] */
            loadA: number;
            /**
             * @description The way
             * @enum {string}
             */
            method: "remote-line" | "relay" | "signal-sensing" | "accessory-relay";
            relay?: components["schemas"]["TurnOnRelay"];
            /** @description Why this way */
            why: string;
        };
        /** @description The relay that turns the amplifiers on. */
        TurnOnRelay: {
            /** @description Current of the coil [A] */
            coilCurrentA: number;
            /** @description Fuse of its feed [A] */
            fuseA: number;
            /** @description How it is wired */
            terminals: components["schemas"]["RelayTerminal"][];
        };
        /** @description How the amplifier can be switched on. */
        TurnOnRequest: {
            /** @description Whether the amplifier can switch itself on by its signal */
            amplifierSenses?: boolean;
            /** @description What that output may deliver [A] */
            limitA?: number;
            /** @description Turn-on currents of all amplifiers and accessories */
            loadsA?: number[];
            /** @description Coil of the relay [Ω] */
            relayCoilOhm?: number;
            /** @description Whether the source has a switched 12 V output */
            remoteOutput: boolean;
            /** @description Highest voltage with the engine running [V] */
            systemVoltageV?: number;
        };
        /** @description A slip that would explain what is odd on the sheet. */
        UnitSlip: {
            /** @description The slip in words */
            detail: string;
            /** @description Name of the slip */
            id: string;
            mended: components["schemas"]["MendedParameter"];
        };
        /** @description An alignment that has no member for the driver. */
        UnsuitedAlignment: {
            /** @description Alignment; /v1/reference/alignments describes each */
            alignment?: components["schemas"]["AlignmentId"];
            /** @description Kind of the enclosure */
            kind: components["schemas"]["EnclosureKind"];
            /** @description The reason with its figures */
            why: string;
        };
        /** @description What to lay now for the next amplifier. */
        UpsizedCable: {
            /** @description Size */
            designation: string;
            /** @description Fuse once both amplifiers run [A] */
            fuseRatingA: number;
        };
        /**
         * @description The air that a volume of compliance was stated for.
         * @enum {string}
         */
        VasAir: "reference" | "request";
        /**
         * @description What drives the vehicle.
         * @enum {string}
         */
        VehicleDrive: "combustion" | "mild-hybrid" | "hybrid" | "electric";
        /** @description One chamber behind the cone with ports to the outside. */
        VentedBox: {
            /**
             * @description Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "vented";
            rear: components["schemas"]["VentedChamber"];
        };
        /** @description A chamber with ports. */
        VentedChamber: {
            /** @description Q of the absorption at the frequency of the chamber; absent: none [1] */
            absorptionQ?: number;
            /** @description Q of the leak to the outside at the frequency of the chamber; absent: tight [1] */
            leakQ?: number;
            /** @description Acoustic volume for all drivers together [L] */
            netVolumeL: number;
            port: components["schemas"]["Port"];
        };
        /** @description What one version moved. */
        VersionChanges: {
            /** @description Against the version before it; empty where nothing moved */
            moved: components["schemas"]["MovedFigures"][];
            /** @description As in `calculation.version` of an answer */
            version: string;
        };
        /** @description From the outer envelope to the air that acts as the spring. */
        VolumeBalance: {
            /** @description Wood of the shell [L] */
            boardL: number;
            displaced: components["schemas"]["Displaced"];
            /** @description How far the box is from it [%] */
            errorPercent?: number;
            /** @description Outer envelope [L] */
            externalL: number;
            /** @description Inside of the panels, empty [L] */
            grossL: number;
            /** @description Air that acts as the spring [L] */
            netL: number;
            /** @description Hollow before a recessed front [L] */
            recessL: number;
            /** @description Every line of the subtraction */
            rows: components["schemas"]["VolumeRow"][];
            /** @description The net volume asked for [L] */
            targetL?: number;
        };
        /** @description One line of the subtraction. */
        VolumeRow: {
            /** @description How it was reached */
            how: string;
            /**
             * @description What takes it
             * @enum {string}
             */
            item: "drivers" | "ports" | "braces" | "amplifier" | "terminal" | "lining" | "baffleRings" | "cleats" | "divider" | "other";
            /**
             * @description How the volume is known
             * @enum {string}
             */
            known: "given" | "computed" | "estimated";
            /** @description Volume [L] */
            volumeL: number;
        };
        /** @description A part that could not begin. */
        WaitingPart: {
            /**
             * @description There is no answer
             * @enum {boolean}
             */
            done: false;
            /** @description What it waits for */
            problem: components["schemas"]["Problem"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description Waits for what another part should give (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "waiting";
        };
        /** @description The coil some time after switching on. */
        WarmingMoment: {
            /** @description Temperature of the coil [°C] */
            coilC: number;
            /** @description Level lost in the mass-controlled band [dB] */
            compressionDb: number;
            /** @description DC resistance of the drivers as they are joined [Ω] */
            reOhm: number;
            /** @description Time at the given drive [s] */
            timeS: number;
        };
        /** @description JSON Merge Patch (RFC 7396) onto the request of the plan. */
        WayOutPatch: {
            car?: components["schemas"]["PlanCarPatch"];
            /** @description Drivers in the box */
            driverCount?: number;
            /** @description Takes out what the box was asked to be */
            enclosure?: null;
        };
        /** @description The planned box with one figure changed, all else as it is set. */
        WhatIfRow: {
            /** @description Mean of these levels against the plan [dB] */
            againstPlanDb: number;
            /** @description Largest air speed in the port, peak [m/s] */
            airSpeedMPerS?: number;
            /**
             * @description `volume`: the same port on a larger or smaller box; `tuning`: a longer or shorter port; `power`: the gain
             * @enum {string}
             */
            change: "none" | "volume" | "tuning" | "port-length" | "port-area" | "power";
            /** @description Largest excursion over Xmax [1] */
            coneOfXmax?: number;
            /** @description Half power [Hz] */
            f3Hz?: number;
            /** @description The figure over the planned one [1] */
            factor: number;
            /** @description Power of all outputs up to which every limit is kept, the filters as they are set [W] */
            heldPowerW: number;
            /** @description At 25, 31.5, 40, 50 and 63 Hz where the figures of the plan are counted, held back by the limits */
            levelDb: number[];
            /** @description Net volume [L] */
            netVolumeL: number;
            /** @description Tuning [Hz] */
            tuningHz?: number;
        };
        /** @description Result with its cautions, assumed defaults and sources. */
        WireCoilsAnswer: {
            /** @description Every default that was used */
            assumed: components["schemas"]["Assumed"][];
            /** @description With `?basis=true` */
            basis?: components["schemas"]["Basis"][];
            calculation: components["schemas"]["Calculation"];
            /** @description Doubts and dangers, the gravest first */
            cautions: components["schemas"]["Caution"][];
            result: components["schemas"]["CoilWiringResult"];
            /** @description See /v1/reference/sources */
            sources: components["schemas"]["SourceId"][];
        };
        /** @description What /v1/coils/wiring gives. */
        WireCoilsDone: {
            answer: components["schemas"]["WireCoilsAnswer"];
            /**
             * @description There is an answer
             * @enum {boolean}
             */
            done: true;
            /** @description The resource gives the same answer for it */
            request: components["schemas"]["CoilWiringRequest"];
            /** @description Path of the resource behind the part */
            resource: string;
            /**
             * @description There is an answer (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            status: "done";
        };
        /** @description What /v1/coils/wiring gives, or why not. */
        WireCoilsPart: components["schemas"]["WireCoilsDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** @description What one pair of hands does on one day of eight hours. */
        WorkDay: {
            /** @description From 1 */
            day: number;
            /** @description Hands at work [min] */
            minutes: number;
            /** @description Ids of the steps begun on it, in this order; what cures goes on through the night */
            steps: string[];
        };
    };
    responses: {
        /** @description `body-too-large`: Body too large */
        BodyTooLarge: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `internal`: Internal error */
        InternalError: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `invalid-request`: Request does not fit the contract. `unreadable-body`: Body is not JSON. `malformed-http`: Not HTTP */
        InvalidRequest: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `not-positive`: Not a positive number. `out-of-range`: Out of range. `missing-input`: Not enough information. `conflicting-input`: Contradictory input. `no-solution`: No such design. `unknown-designation`: Unknown designation. `undefined-rating`: Power rating of no defined kind. `insulation-below-ambient`: Insulation below ambient. `fuse-voltage`: Fuse below system voltage */
        NoSuchDesign: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `not-acceptable`: No such format */
        NotAcceptable: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `not-found`: No such resource */
        NotFound: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The client has this already */
        NotModified: {
            headers: {
                "Cache-Control": components["headers"]["Cache-Control"];
                ETag: components["headers"]["ETag"];
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content?: never;
        };
        /** @description `too-many-requests`: Too many requests */
        TooManyRequests: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "Retry-After": components["headers"]["Retry-After"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `unauthorised`: API key missing or unknown */
        Unauthorised: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "WWW-Authenticate": components["headers"]["WWW-Authenticate"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `out-of-time`: Time limit reached. `overloaded`: Too busy */
        Unavailable: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "Retry-After": components["headers"]["Retry-After"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `unsupported-media-type`: Unsupported media type */
        UnsupportedMediaType: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
    parameters: {
        /** @description Density [kg/m³] */
        AirDensityKgPerM3: number;
        /** @description Static pressure [Pa] */
        AirPressurePa: number;
        /** @description Speed of sound [m/s] */
        AirSoundSpeedMPerS: number;
        /** @description Air temperature [°C] */
        AirTemperatureC: number;
        /** @description `true` adds how each figure was reached */
        Basis: boolean;
        /** @description Surroundings of the cable [°C] */
        CableAmbientC: number;
        /** @description Damping factor of the data sheet at this load [1] */
        CableAmplifierDampingFactor: number;
        /** @description Metal; `unknown` is worked out as 10 % copper-clad aluminium */
        CableConductor: components["schemas"]["Conductor"];
        /** @description A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
        CableDesignation: string;
        /** @description Temperature class of the insulation [°C] */
        CableInsulationC: number;
        /** @description Way from the amplifier to the box; both conductors are counted [m] */
        CableLengthM: number;
        /** @description Electrical Q of the drivers, needs reOhm [1] */
        CableQes: number;
        /** @description Direct-current resistance of the whole load, for the effect on Qes [Ω] */
        CableReOhm: number;
        /** @description Most of the load that may be in the wire [%] */
        CableResistanceLimitPercent: number;
        /** @description Resistance over that of a solid conductor [1] */
        CableStrandingFactor: number;
        /** @description Code of the entry */
        Code: string;
        /** @description Test tones or sustained notes: the fuse is held to the full sine for good */
        ContinuousTone: boolean;
        /** @description `six` significant digits (the default) or `full` precision */
        Digits: "six" | "full";
        /** @description Drivers */
        DriverCount: number;
        /** @description Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
        DriverVasAir: components["schemas"]["VasAir"];
        /** @description Linear excursion, one way, peak [mm] */
        DriverXmaxMm: number;
        /** @description Form of the answer, for who cannot set Accept; stands before it */
        Form: "json" | "csv";
        /** @description Surroundings of the fuse [°C] */
        FuseAmbientC: number;
        /** @description Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
        HeavyCurrentA: number;
        /** @description Continuous load over fuse rating [1] */
        LoadRatio: number;
        /** @description External fuse the amplifier’s maker states [A] */
        MakerFuseA: number;
        /** @description `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
        Policy: components["schemas"]["FusePolicy"];
        /** @description Capacity of the bank at 20 h [A·h] */
        SourceCapacityAh: number;
        /** @description Kind of battery; with capacityAh in place of the cold cranking current */
        SourceChemistry: components["schemas"]["BatteryChemistry"];
        /** @description Cold cranking current, from which both ends of the resistance follow [A] */
        SourceColdCrankingA: number;
        /** @description Open-circuit voltage of the battery [V] */
        SourceOpenCircuitV: number;
        /** @description Internal resistance of the battery [Ω] */
        SourceResistanceOhm: number;
        /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
        SystemVoltageV: number;
    };
    requestBodies: never;
    headers: {
        /** @description How long a cache may keep the answer. */
        "Cache-Control": string;
        /** @description Strong tag of the answer; send it back in If-None-Match. */
        ETag: string;
        /** @description What is left of the window: `r` calls, `t` seconds (IETF draft on RateLimit fields). */
        RateLimit: string;
        /** @description How many calls a window takes: `q` calls in `w` seconds. */
        "RateLimit-Policy": string;
        /** @description Seconds after which to ask again. */
        "Retry-After": number;
        /** @description How a caller says who it is. */
        "WWW-Authenticate": string;
        /** @description Id of the request, the caller’s own where it sent one; the log has it. */
        "X-Request-Id": string;
    };
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    matchAmplifierByQuery: {
        parameters: {
            query: {
                /** @description Channels */
                "amplifier.channels"?: number;
                /** @description Class of the output stage, for the heat */
                "amplifier.class"?: components["schemas"]["AmplifierClass"];
                /** @description Output over input at rated output [1] */
                "amplifier.efficiency"?: number;
                /** @description Area it takes where it is mounted [cm²] */
                "amplifier.footprintCm2"?: number;
                /** @description Lowest load of a bridged pair [Ω] */
                "amplifier.minimumBridgedOhm"?: number;
                /** @description Lowest load of one channel [Ω] */
                "amplifier.minimumOhm": number;
                /** @description Name by which the answer speaks of it */
                "amplifier.name"?: string;
                /** @description Rating of one [A] */
                "amplifier.onboardFusesA.0"?: number;
                /** @description Price, in any one currency [1] */
                "amplifier.price"?: number;
                /** @description Idle draw [W] */
                "amplifier.quiescentW"?: number;
                /** @description Supply at which the powers are rated, for what the fuses pass [V] */
                "amplifier.ratedVoltageV"?: number;
                /** @description What kind of figure each rating is; only `rms` can be matched */
                "amplifier.ratingKind"?: components["schemas"]["RatingKind"];
                /** @description Rated with two channels bridged */
                "amplifier.ratings.0.bridged"?: boolean;
                /** @description Load it is rated at [Ω] */
                "amplifier.ratings.0.loadOhm": number;
                /** @description Continuous RMS power of one channel, or of the bridged pair [W] */
                "amplifier.ratings.0.powerW": number;
                /** @description How many of the amplifier may be used together */
                amplifierCount?: number;
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Surroundings of the cable [°C] */
                "cable.ambientC"?: components["parameters"]["CableAmbientC"];
                /** @description Damping factor of the data sheet at this load [1] */
                "cable.amplifierDampingFactor"?: components["parameters"]["CableAmplifierDampingFactor"];
                /** @description Metal; `unknown` is worked out as 10 % copper-clad aluminium */
                "cable.conductor"?: components["parameters"]["CableConductor"];
                /** @description A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
                "cable.designation"?: components["parameters"]["CableDesignation"];
                /** @description Temperature class of the insulation [°C] */
                "cable.insulationC"?: components["parameters"]["CableInsulationC"];
                /** @description Way from the amplifier to the box; both conductors are counted [m] */
                "cable.lengthM"?: components["parameters"]["CableLengthM"];
                /** @description Electrical Q of the drivers, needs reOhm [1] */
                "cable.qes"?: components["parameters"]["CableQes"];
                /** @description Direct-current resistance of the whole load, for the effect on Qes [Ω] */
                "cable.reOhm"?: components["parameters"]["CableReOhm"];
                /** @description Most of the load that may be in the wire [%] */
                "cable.resistanceLimitPercent"?: components["parameters"]["CableResistanceLimitPercent"];
                /** @description Resistance over that of a solid conductor [1] */
                "cable.strandingFactor"?: components["parameters"]["CableStrandingFactor"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Rated impedance of one coil [Ω] */
                "driver.coilOhm": number;
                /** @description Voice coils */
                "driver.coils": number;
                /** @description Continuous RMS power it takes, all its coils together [W] */
                "driver.powerW": number;
                /** @description What kind of figure powerW is; only `rms` can be matched */
                "driver.ratingKind"?: components["schemas"]["RatingKind"];
                /** @description Drivers */
                driverCount: components["parameters"]["DriverCount"];
                /** @description Channels */
                "otherAmplifiers.0.channels"?: number;
                /** @description Class of the output stage, for the heat */
                "otherAmplifiers.0.class"?: components["schemas"]["AmplifierClass"];
                /** @description Output over input at rated output [1] */
                "otherAmplifiers.0.efficiency"?: number;
                /** @description Area it takes where it is mounted [cm²] */
                "otherAmplifiers.0.footprintCm2"?: number;
                /** @description Lowest load of a bridged pair [Ω] */
                "otherAmplifiers.0.minimumBridgedOhm"?: number;
                /** @description Lowest load of one channel [Ω] */
                "otherAmplifiers.0.minimumOhm"?: number;
                /** @description Name by which the answer speaks of it */
                "otherAmplifiers.0.name"?: string;
                /** @description Rating of one [A] */
                "otherAmplifiers.0.onboardFusesA.0"?: number;
                /** @description Price, in any one currency [1] */
                "otherAmplifiers.0.price"?: number;
                /** @description Idle draw [W] */
                "otherAmplifiers.0.quiescentW"?: number;
                /** @description Supply at which the powers are rated, for what the fuses pass [V] */
                "otherAmplifiers.0.ratedVoltageV"?: number;
                /** @description What kind of figure each rating is; only `rms` can be matched */
                "otherAmplifiers.0.ratingKind"?: components["schemas"]["RatingKind"];
                /** @description Rated with two channels bridged */
                "otherAmplifiers.0.ratings.0.bridged"?: boolean;
                /** @description Load it is rated at [Ω] */
                "otherAmplifiers.0.ratings.0.loadOhm"?: number;
                /** @description Continuous RMS power of one channel, or of the bridged pair [W] */
                "otherAmplifiers.0.ratings.0.powerW"?: number;
                /** @description `power`: closest to the drivers; `price` or `size`: least among those that fit, given for every amplifier */
                rankBy?: "power" | "price" | "size";
                /** @description Level of the tone against full scale [dB] */
                "tone.levelDb"?: number;
                /** @description Allowance for quiet recordings: they come louder, and loud ones clip [dB] */
                "tone.quietRecordingDb"?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MatchAmplifierAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    matchAmplifier: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AmplifierMatchRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MatchAmplifierAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    runBatch: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "ndjson";
                /** @description Leaves out the calls before this index: where a stream was cut, go on behind its last whole line */
                fromIndex?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BatchRequest"];
            };
        };
        responses: {
            /** @description Every call with its own status */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    drawBox: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "svg" | "dxf" | "pdf";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BoxDrawingRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrawBoxAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    modelBox: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "gltf";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BoxRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ModelBoxAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    checkPanelVibration: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PanelVibrationRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CheckPanelVibrationAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    layOutBox: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: components["parameters"]["Form"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BoxRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LayOutBoxAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    nestPanels: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: components["parameters"]["Form"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SheetPlanRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NestPanelsAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listCautions: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every kind of caution */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CautionCatalogue"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    describeCaution: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Code of the entry */
                code: components["parameters"]["Code"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One kind of caution */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CautionKind"];
                };
            };
            304: components["responses"]["NotModified"];
            404: components["responses"]["NotFound"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listChanges: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Which figures each version moved */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Changes"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    wireCoilsByQuery: {
        parameters: {
            query: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Surroundings of the cable [°C] */
                "cable.ambientC"?: components["parameters"]["CableAmbientC"];
                /** @description Damping factor of the data sheet at this load [1] */
                "cable.amplifierDampingFactor"?: components["parameters"]["CableAmplifierDampingFactor"];
                /** @description Metal; `unknown` is worked out as 10 % copper-clad aluminium */
                "cable.conductor"?: components["parameters"]["CableConductor"];
                /** @description A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
                "cable.designation"?: components["parameters"]["CableDesignation"];
                /** @description Temperature class of the insulation [°C] */
                "cable.insulationC"?: components["parameters"]["CableInsulationC"];
                /** @description Way from the amplifier to the box; both conductors are counted [m] */
                "cable.lengthM"?: components["parameters"]["CableLengthM"];
                /** @description Electrical Q of the drivers, needs reOhm [1] */
                "cable.qes"?: components["parameters"]["CableQes"];
                /** @description Direct-current resistance of the whole load, for the effect on Qes [Ω] */
                "cable.reOhm"?: components["parameters"]["CableReOhm"];
                /** @description Most of the load that may be in the wire [%] */
                "cable.resistanceLimitPercent"?: components["parameters"]["CableResistanceLimitPercent"];
                /** @description Resistance over that of a solid conductor [1] */
                "cable.strandingFactor"?: components["parameters"]["CableStrandingFactor"];
                /** @description Lowest load of ONE channel of a pair that is to be bridged; the bridged pair needs twice that [Ω] */
                channelMinimumOhm?: number;
                /** @description Rated impedance of one coil, when all coils are alike [Ω] */
                coilOhm?: number;
                /** @description Direct-current resistance of one coil, for like coils [Ω] */
                coilReOhm?: number;
                /** @description Rated impedance of this coil [Ω] */
                "coilsOhm.0"?: number;
                /** @description Voice coils of each driver */
                coilsPerDriver: number;
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Drivers */
                driverCount: components["parameters"]["DriverCount"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "svg";
                /** @description Lowest load the output may drive, as the data sheet states it for the way it is used [Ω] */
                minimumOhm?: number;
                /** @description Load wished for [Ω] */
                targetOhm?: number;
                /** @description Power into the whole load [W] */
                totalPowerW?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WireCoilsAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    wireCoils: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "svg";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CoilWiringRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WireCoilsAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    searchDesigns: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignSearchRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SearchDesignsAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    completeDriverParametersByQuery: {
        parameters: {
            query?: {
                /** @description Density [kg/m³] */
                "air.densityKgPerM3"?: components["parameters"]["AirDensityKgPerM3"];
                /** @description Static pressure [Pa] */
                "air.pressurePa"?: components["parameters"]["AirPressurePa"];
                /** @description Speed of sound [m/s] */
                "air.soundSpeedMPerS"?: components["parameters"]["AirSoundSpeedMPerS"];
                /** @description Air temperature [°C] */
                "air.temperatureC"?: components["parameters"]["AirTemperatureC"];
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Voice coils of the driver */
                "coils.count"?: 1 | 2 | 4;
                /** @description Connection that Re of the sheet belongs to */
                "coils.resistanceStatedFor"?: components["schemas"]["CoilConnection"];
                /** @description Connection that Bl, Q and Le of the sheet belong to */
                "coils.statedFor"?: components["schemas"]["CoilConnection"];
                /** @description Connection the answer is for */
                "coils.wanted"?: components["schemas"]["CoilConnection"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Force factor [T·m] */
                "driver.blTm"?: number;
                /** @description Compliance of the suspension [mm/N] */
                "driver.cmsMmPerN"?: number;
                /** @description Free-air resonance [Hz] */
                "driver.fsHz"?: number;
                /** @description Coil inductance [mH] */
                "driver.leMh"?: number;
                /** @description Resistance across the inductance [Ω] */
                "driver.leParallelOhm"?: number;
                /** @description Printed sensitivity at 1 W, 1 m [dB] */
                "driver.level1WDb"?: number;
                /** @description Printed sensitivity at 2.83 V, 1 m [dB] */
                "driver.level2V83Db"?: number;
                /** @description Moving mass without air load, in place of Mms [g] */
                "driver.mmdG"?: number;
                /** @description Moving mass with its air load [g] */
                "driver.mmsG"?: number;
                /** @description Nominal diameter (12 in is 305 mm); used where Sd is absent [mm] */
                "driver.nominalDiameterMm"?: number;
                /** @description Continuous power rating [W] */
                "driver.powerW"?: number;
                /** @description Electrical Q [1] */
                "driver.qes"?: number;
                /** @description Mechanical Q [1] */
                "driver.qms"?: number;
                /** @description Total Q [1] */
                "driver.qts"?: number;
                /** @description Rated impedance [Ω] */
                "driver.ratedImpedanceOhm"?: number;
                /** @description Direct-current resistance of the coil [Ω] */
                "driver.reOhm"?: number;
                /** @description Mechanical resistance [kg/s] */
                "driver.rmsKgPerS"?: number;
                /** @description Effective area of the cone [cm²] */
                "driver.sdCm2"?: number;
                /** @description Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
                "driver.vasAir"?: components["parameters"]["DriverVasAir"];
                /** @description Air volume as compliant as the suspension [L] */
                "driver.vasL"?: number;
                /** @description Linear excursion, one way, peak [mm] */
                "driver.xmaxMm"?: components["parameters"]["DriverXmaxMm"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompleteDriverParametersAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    completeDriverParameters: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DriverParametersRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompleteDriverParametersAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    computeResponse: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "csv" | "svg";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EnclosureResponseRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComputeResponseAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    sizeEnclosure: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EnclosureSizingRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SizeEnclosureAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    computeTolerance: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: components["parameters"]["Form"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EnclosureToleranceRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComputeToleranceAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    planSystem: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Form of the answer, for who cannot set Accept; stands before it */
                form?: "json" | "compact" | "html" | "pdf" | "csv" | "text" | "markdown";
                /** @description Only these parts of the result, divided by commas; the summary with the verdict, all cautions and all defaults always come. There are `name`, `summary`, `cover`, `parts`, `circuit`, `choice`, `waysOut`, `headroom`, `whatIf`, `tried`, `billOfMaterials`, `buildOrder`, `restraint`, `commissioning`, `readings`, `remedies`, `safety`, `parts.matching`, `parts.wiring`, `parts.driver`, `parts.sizing`, `parts.port`, `parts.box`, `parts.response`, `parts.sheets`, `parts.current`, `parts.cable`, `parts.fuse`, `parts.circuit`, `parts.signal` */
                parts?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanSystemAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    sizePortByQuery: {
        parameters: {
            query: {
                /** @description Density [kg/m³] */
                "air.densityKgPerM3"?: components["parameters"]["AirDensityKgPerM3"];
                /** @description Static pressure [Pa] */
                "air.pressurePa"?: components["parameters"]["AirPressurePa"];
                /** @description Speed of sound [m/s] */
                "air.soundSpeedMPerS"?: components["parameters"]["AirSoundSpeedMPerS"];
                /** @description Air temperature [°C] */
                "air.temperatureC"?: components["parameters"]["AirTemperatureC"];
                /** @description Peak; 17 for sharp ends, 25 for flares when absent; above 34, 10 % of the speed of sound, none is built [m/s] */
                airSpeedLimitMPerS?: number;
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Mitred right-angle bends */
                bends?: number;
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Force factor of the coils as they are joined [T·m] */
                "driver.blTm"?: number;
                /** @description Compliance of the suspension [mm/N] */
                "driver.cmsMmPerN"?: number;
                /** @description Free-air resonance [Hz] */
                "driver.fsHz"?: number;
                /** @description Second inductance, in series with the first [mH] */
                "driver.le2Mh"?: number;
                /** @description Resistance across the second inductance [Ω] */
                "driver.le2ParallelOhm"?: number;
                /** @description n of a lossy coil K·(jω)^n; 0.5 semi-inductance, 1 inductance [1] */
                "driver.leExponent"?: number;
                /** @description K of a lossy coil K·(jω)^n, in place of the inductances [Ω·s^n] */
                "driver.leFactor"?: number;
                /** @description Inductance of the coils as they are joined [mH] */
                "driver.leMh"?: number;
                /** @description Resistance directly across the inductance (lossy coil) [Ω] */
                "driver.leParallelOhm"?: number;
                /** @description Moving mass with air load [g] */
                "driver.mmsG"?: number;
                /** @description Continuous thermal rating [W] */
                "driver.powerW"?: number;
                /** @description Electrical Q at resonance [1] */
                "driver.qes"?: number;
                /** @description Mechanical Q at resonance [1] */
                "driver.qms"?: number;
                /** @description Total Q at resonance; stands in for one of the other two [1] */
                "driver.qts"?: number;
                /** @description DC resistance of the coils as they are joined [Ω] */
                "driver.reOhm"?: number;
                /** @description Mechanical resistance [kg/s] */
                "driver.rmsKgPerS"?: number;
                /** @description Effective piston area [cm²] */
                "driver.sdCm2"?: number;
                /** @description Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
                "driver.vasAir"?: components["parameters"]["DriverVasAir"];
                /** @description Air volume of equal compliance, as the sheet prints it [L] */
                "driver.vasL"?: number;
                /** @description Linear excursion, one way, peak [mm] */
                "driver.xmaxMm"?: components["parameters"]["DriverXmaxMm"];
                /** @description Number of drivers, both of each isobaric pair */
                "drivers.count"?: number;
                /** @description Drivers in each string; the strings lie in parallel */
                "drivers.inSeries"?: number;
                /** @description How the outer and the inner drivers are joined */
                "drivers.isobaric.connection"?: "parallel" | "series";
                /** @description Volume between the two cones of all pairs together [L] */
                "drivers.isobaric.couplingVolumeL"?: number;
                /** @description `convention`: 0.85 flanged, 0.613 free, times the radius of equal area. `by-shape`: exact pipe ends, slots by shape and wall. */
                endModel?: components["schemas"]["PortEndModel"];
                /** @description Inner end: `flanged` flush in a panel, `free` standing in the box */
                "ends.inner"?: components["schemas"]["PortEndSituation"];
                /** @description Outer end */
                "ends.outer"?: components["schemas"]["PortEndSituation"];
                /** @description Centre frequency [Hz] */
                "filters.0.centreHz"?: number;
                /** @description Corner frequency [Hz] */
                "filters.0.cornerHz"?: number;
                /** @description `butterworth` and `bessel`: half power (−3.01 dB) at the corner. `linkwitz-riley`: −6.02 dB there, even orders. `chosen-q`: order 2 with the given Q */
                "filters.0.family"?: components["schemas"]["FilterFamily"];
                /** @description Gain of the shelf; negative cuts [dB] */
                "filters.0.gainDb"?: number;
                /** @description Kind of filter */
                "filters.0.kind"?: "high-pass" | "low-pass" | "low-shelf" | "high-shelf" | "peaking";
                /** @description Order: 6 dB an octave each */
                "filters.0.order"?: number;
                /** @description Q of the pole pair, only with the family `chosen-q` [1] */
                "filters.0.q"?: number;
                /** @description Lowest frequency at which the flow is looked at. Absent: 15 where the filters hold a high-pass, otherwise 0.8 of the tuning [Hz] */
                highPassHz?: number;
                /** @description Leak of the box as a Q at the tuning [1] */
                leakQ?: number;
                /** @description Upper end of the range the box plays [Hz] */
                lowPassHz?: number;
                /** @description Ends `sharp`, or `flared` at both sides */
                mouth?: components["schemas"]["PortMouth"];
                /** @description Net volume, port and driver taken off [L] */
                netVolumeL: number;
                /** @description In place of the driver: peak flow [m³/s] */
                peakFlowM3PerS?: number;
                /** @description Clear height of the box where a full-width slot ends, the slot in it [mm] */
                "port.chamberHeightMm"?: number;
                /** @description Equal ports; weighed when absent */
                "port.count"?: number;
                /** @description Clear diameter of one [mm] */
                "port.diameterMm"?: number;
                /** @description Radius of a rounding at both mouths, part of the length [mm] */
                "port.flareRadiusMm"?: number;
                /** @description Clear height [mm] */
                "port.heightMm"?: number;
                /** @description Shape */
                "port.kind"?: components["schemas"]["PortShape"];
                /** @description Physical length, to learn the tuning of a port given whole [mm] */
                "port.lengthMm"?: number;
                /** @description `own` walls all round, `one-shared` with the box, or `full-width`: three of the walls are the box */
                "port.walls"?: components["schemas"]["SlotWalls"];
                /** @description Clear width of one: the inner width of the box for a full-width slot [mm] */
                "port.widthMm"?: number;
                /** @description Load at which the power is meant [Ω] */
                "source.loadOhm"?: number;
                /** @description In place of the voltage: power into `loadOhm` [W] */
                "source.powerW"?: number;
                /** @description Resistance of amplifier and cable before the drivers [Ω] */
                "source.seriesOhm"?: number;
                /** @description RMS voltage over the whole group of drivers, before the series resistance [V] */
                "source.voltageV"?: number;
                /** @description Longest centre line with bends [mm] */
                "space.bentMm"?: number;
                /** @description Longest straight run from the outer face, clearance behind the mouth taken off [mm] */
                "space.straightMm"?: number;
                /** @description In place of the driver: area times one-way excursion of all cones [L] */
                sweptVolumeL?: number;
                /** @description Tuning; follows from a port given whole [Hz] */
                tuningHz?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SizePortAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    sizePort: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PortSizingRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SizePortAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listProblems: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every kind of refusal */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProblemCatalogue"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    describeProblem: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Code of the entry */
                code: components["parameters"]["Code"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One kind of refusal */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProblemKind"];
                };
            };
            304: components["responses"]["NotModified"];
            404: components["responses"]["NotFound"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listAlignments: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Alignments of enclosures */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlignmentsTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listCables: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Cable sizes with section, resistance and allowable current */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CablesTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listFormulas: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Formulas behind the figures */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FormulasTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listFuses: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Fuse-links for road vehicles by family */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FusesTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listMaterials: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Boards for boxes */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaterialsTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listSources: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Sources of the figures */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SourcesTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    listTerminals: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Terminal numbers of vehicle wiring */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TerminalsTable"];
                };
            };
            304: components["responses"]["NotModified"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    describeShape: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Name of the schema in the contract */
                name: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The schema */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Schema"];
                };
            };
            304: components["responses"]["NotModified"];
            404: components["responses"]["NotFound"];
            406: components["responses"]["NotAcceptable"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    setUpSignal: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignalSetupRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SetUpSignalAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    chooseCableByQuery: {
        parameters: {
            query: {
                /** @description Hottest surroundings along the run [°C] */
                ambientC?: number;
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Current-carrying power conductors in the same loom, this one included */
                bundledConductors?: number;
                /** @description Limit */
                "checks.0"?: components["schemas"]["CableLimit"];
                /** @description Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
                conductor?: components["schemas"]["Conductor"];
                /** @description Conductor temperature the drop is judged at [°C] */
                conductorTemperatureC?: number;
                /** @description Contact resistance that counts into the drop, once in the loop [Ω] */
                contactOhm?: number;
                /** @description Test tones or sustained notes: the fuse is held to the full sine for good */
                continuousTone?: components["parameters"]["ContinuousTone"];
                /** @description Current at full sine; or loadPowerW [A] */
                currentA?: number;
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Largest drop on the conductors, of nominal voltage [%] */
                dropLimitPercent?: number;
                /** @description The same in volts [V] */
                dropLimitV?: number;
                /** @description Voltage at which the amplifier’s converter stops [V] */
                dropOutV?: number;
                /** @description Fuse that is already there [A] */
                fuseA?: number;
                /** @description Surroundings of the fuse [°C] */
                fuseAmbientC?: components["parameters"]["FuseAmbientC"];
                /** @description Family */
                "fuseTypes.0"?: components["schemas"]["FuseType"];
                /** @description Power the next amplifier will draw: what to lay now [W] */
                futureLoadPowerW?: number;
                /** @description Series of the size; AWG, SAE and mm² are different sizes */
                gaugeSystem?: components["schemas"]["GaugeSystem"];
                /** @description Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
                heavyCurrentA?: components["parameters"]["HeavyCurrentA"];
                /** @description Temperature class printed on the insulation [°C] */
                insulationC?: number;
                /** @description What the insulation is made of; sets what it survives in a short circuit, which its class does not: PVC 160 °C, XLPE (cross-linked polyethylene) and EPR 250 °C, rubber 200 to 220 °C, silicone 350 °C */
                insulationMaterial?: components["schemas"]["InsulationMaterial"];
                /** @description One lug; four of them lie in the loop beside the drop [Ω] */
                jointOhm?: number;
                /** @description `constant-current`: the current at nominal voltage; `constant-power`: exact, the current rises as the voltage falls */
                loadModel?: "constant-current" | "constant-power";
                /** @description Power drawn at full sine (not put out); or currentA [W] */
                loadPowerW?: number;
                /** @description Continuous load over fuse rating [1] */
                loadRatio?: components["parameters"]["LoadRatio"];
                /** @description External fuse the amplifier’s maker states [A] */
                makerFuseA?: components["parameters"]["MakerFuseA"];
                /** @description Where a metric copper size takes its resistance from */
                metricResistance?: components["schemas"]["MetricResistance"];
                /** @description Rating [A] */
                "onboardFusesA.0"?: number;
                /** @description `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
                policy?: components["parameters"]["Policy"];
                /** @description Conductor length of the positive run [m] */
                positiveLengthM: number;
                /** @description Supply voltage that the amplifier at the end is rated at; it must suit the system [V] */
                ratedVoltageV?: number;
                /** @description Resistivity at 20 °C in place of the metal’s; metric sizes then use their nominal area [Ω·m] */
                resistivityOhmM?: number;
                /** @description What the body is made of */
                "return.body"?: components["schemas"]["ChassisBody"];
                /** @description Return by cable */
                "return.kind"?: "cable" | "chassis";
                /** @description Ground lead, of the size of the positive [m] */
                "return.leadLengthM"?: number;
                /** @description Conductor length of the return [m] */
                "return.lengthM"?: number;
                /** @description Body between ground bolt and battery post [Ω] */
                "return.resistanceOhm"?: number;
                /** @description Fault current [A] */
                "shortCircuit.currentA"?: number;
                /** @description How long it flows [s] */
                "shortCircuit.durationS"?: number;
                /** @description What the insulation survives once [°C] */
                "shortCircuit.endC"?: number;
                /** @description Heat capacity of the metal by volume; k then follows from the metal, else from the standard’s K [J/(m³·K)] */
                "shortCircuit.heatCapacityJPerM3K"?: number;
                /** @description Conductor before the fault [°C] */
                "shortCircuit.startC"?: number;
                /** @description Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series */
                "sizes.0"?: string;
                /** @description Capacity of the bank at 20 h [A·h] */
                "source.capacityAh"?: components["parameters"]["SourceCapacityAh"];
                /** @description Kind of battery; with capacityAh in place of the cold cranking current */
                "source.chemistry"?: components["parameters"]["SourceChemistry"];
                /** @description Cold cranking current, from which both ends of the resistance follow [A] */
                "source.coldCrankingA"?: components["parameters"]["SourceColdCrankingA"];
                /** @description Open-circuit voltage of the battery [V] */
                "source.openCircuitV"?: components["parameters"]["SourceOpenCircuitV"];
                /** @description Internal resistance of the battery [Ω] */
                "source.resistanceOhm"?: components["parameters"]["SourceResistanceOhm"];
                /** @description Voltage at the start of the run, when not the nominal one [V] */
                sourceVoltageV?: number;
                /** @description Space */
                "spaces.0"?: components["schemas"]["RunSpace"];
                /** @description Resistance of the stranded over the solid conductor [1] */
                strandingFactor?: number;
                /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
                systemVoltageV: components["parameters"]["SystemVoltageV"];
                /** @description Temperature coefficient at 20 °C in place of the metal’s [1/K] */
                temperatureCoefficientPerK?: number;
                /** @description Largest conductor the amplifier’s terminal takes [mm²] */
                terminalAreaMm2?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChooseCableAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    chooseCable: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CableRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChooseCableAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    computeCircuit: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CircuitRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComputeCircuitAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    computeCurrentByQuery: {
        parameters: {
            query: {
                /** @description Class of the output stage; sets efficiency and partial-load law */
                "amplifiers.0.class"?: components["schemas"]["AmplifierClass"];
                /** @description Output over input at rated output, from the data sheet; beats the class [1] */
                "amplifiers.0.efficiency"?: number;
                /** @description Input current at rated output, from the data sheet; beats the class [A] */
                "amplifiers.0.inputCurrentA"?: number;
                /** @description Supply voltage of that input current; else ratedVoltageV [V] */
                "amplifiers.0.inputVoltageV"?: number;
                /** @description Load wired to it: one of the ratings, or above one, whose draw then bounds it [Ω] */
                "amplifiers.0.loadOhm"?: number;
                /** @description Name for the answer */
                "amplifiers.0.name"?: string;
                /** @description Rating [A] */
                "amplifiers.0.onboardFusesA.0"?: number;
                /** @description Continuous RMS output of all driven channels into the wired load; or give ratings and loadOhm [W] */
                "amplifiers.0.powerW"?: number;
                /** @description Draw at silence, switched on [W] */
                "amplifiers.0.quiescentW"?: number;
                /** @description What the power stands for; peak figures are refused */
                "amplifiers.0.ratedAs"?: components["schemas"]["RatedPower"];
                /** @description Supply voltage of the power rating [V] */
                "amplifiers.0.ratedVoltageV"?: number;
                /** @description Load it is rated into [Ω] */
                "amplifiers.0.ratings.0.loadOhm"?: number;
                /** @description Continuous RMS output, all driven channels together [W] */
                "amplifiers.0.ratings.0.powerW"?: number;
                /** @description Whether the output holds when the supply falls */
                "amplifiers.0.regulation"?: "regulated" | "unregulated";
                /** @description Draw when switched off [A] */
                "amplifiers.0.standbyA"?: number;
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Capacity of the bank at the rated hours [A·h] */
                "battery.capacityAh"?: number;
                /** @description Kind of battery */
                "battery.chemistry"?: components["schemas"]["BatteryChemistry"];
                /** @description Cold cranking current at −18 °C [A] */
                "battery.coldCrankingA"?: number;
                /** @description What the parked car draws beside the amplifiers [A] */
                "battery.parkedLoadA"?: number;
                /** @description Peukert exponent [1] */
                "battery.peukertExponent"?: number;
                /** @description Hours the capacity is printed for [h] */
                "battery.ratedHours"?: number;
                /** @description Reserve capacity: minutes at 25 A to 10.5 V; gives the exponent [min] */
                "battery.reserveMinutes"?: number;
                /** @description Internal resistance of the bank [Ω] */
                "battery.resistanceOhm"?: number;
                /** @description Share of the time to empty that may be used [1] */
                "battery.usableFraction"?: number;
                /** @description Capacitance [F] */
                "capacitor.capacitanceF"?: number;
                /** @description Series resistance of the capacitor [Ω] */
                "capacitor.esrOhm"?: number;
                /** @description Voltage it is charged to [V] */
                "capacitor.fromV"?: number;
                /** @description Resistor it is charged through at first [Ω] */
                "capacitor.prechargeOhm"?: number;
                /** @description Resistance between source and capacitor [Ω] */
                "capacitor.sourceOhm"?: number;
                /** @description Voltage it may fall to [V] */
                "capacitor.toV"?: number;
                /** @description What the vehicle itself draws while it runs [A] */
                "charging.baseLoadA"?: number;
                /** @description Output of an alternator hot over cold [1] */
                "charging.hotFactor"?: number;
                /** @description Output of an alternator at idle from the rating line, cold; or idleFraction [A] */
                "charging.idleA"?: number;
                /** @description Output of an alternator at idle over rated output; or idleA [1] */
                "charging.idleFraction"?: number;
                /** @description Alternator, or a DC-DC converter: from 24 V of a truck, 48 V or the traction battery */
                "charging.kind"?: "alternator" | "converter";
                /** @description Rated output current at system voltage [A] */
                "charging.ratedA"?: number;
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description What drives the vehicle; `mild-hybrid` is a 48 V one without orange cables */
                drive?: components["schemas"]["VehicleDrive"];
                /** @description `isolated` feeds the amplifiers alone when the engine is off; `parallel` joins the first, of the same chemistry */
                "secondBattery.arrangement"?: "isolated" | "parallel";
                /** @description Capacity of the bank at the rated hours [A·h] */
                "secondBattery.capacityAh"?: number;
                /** @description Kind of battery */
                "secondBattery.chemistry"?: components["schemas"]["BatteryChemistry"];
                /** @description Cold cranking current at −18 °C [A] */
                "secondBattery.coldCrankingA"?: number;
                /** @description Peukert exponent [1] */
                "secondBattery.peukertExponent"?: number;
                /** @description Hours the capacity is printed for [h] */
                "secondBattery.ratedHours"?: number;
                /** @description Reserve capacity: minutes at 25 A to 10.5 V; gives the exponent [min] */
                "secondBattery.reserveMinutes"?: number;
                /** @description Internal resistance of the bank [Ω] */
                "secondBattery.resistanceOhm"?: number;
                /** @description Share of the time to empty that may be used [1] */
                "secondBattery.usableFraction"?: number;
                /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
                systemVoltageV: components["parameters"]["SystemVoltageV"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComputeCurrentAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    computeCurrent: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SupplyCurrentRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComputeCurrentAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    computeFeeder: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FeederRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComputeFeederAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    rateFuseByQuery: {
        parameters: {
            query: {
                /** @description Hottest surroundings along the run [°C] */
                "alsoProtects.0.ambientC"?: number;
                /** @description Current-carrying power conductors in the same loom, this one included */
                "alsoProtects.0.bundledConductors"?: number;
                /** @description Metal of the conductor */
                "alsoProtects.0.conductor"?: components["schemas"]["Conductor"];
                /** @description Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series */
                "alsoProtects.0.designation"?: string;
                /** @description Series of the size; AWG, SAE and mm² are different sizes */
                "alsoProtects.0.gaugeSystem"?: components["schemas"]["GaugeSystem"];
                /** @description Temperature class printed on the insulation [°C] */
                "alsoProtects.0.insulationC"?: number;
                /** @description Space */
                "alsoProtects.0.spaces.0"?: components["schemas"]["RunSpace"];
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description Rating [A] */
                "branchFusesA.0"?: number;
                /** @description Hottest surroundings along the run [°C] */
                "cable.ambientC"?: number;
                /** @description Current-carrying power conductors in the same loom, this one included */
                "cable.bundledConductors"?: number;
                /** @description Metal of the conductor */
                "cable.conductor"?: components["schemas"]["Conductor"];
                /** @description Size with its series: "4 AWG", "SAE 4", "25 mm2"; the bare number where gaugeSystem says the series */
                "cable.designation": string;
                /** @description Series of the size; AWG, SAE and mm² are different sizes */
                "cable.gaugeSystem"?: components["schemas"]["GaugeSystem"];
                /** @description Temperature class printed on the insulation [°C] */
                "cable.insulationC"?: number;
                /** @description Space */
                "cable.spaces.0"?: components["schemas"]["RunSpace"];
                /** @description Test tones or sustained notes: the fuse is held to the full sine for good */
                continuousTone?: components["parameters"]["ContinuousTone"];
                /** @description Full-sine current of the load [A] */
                currentA: number;
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** @description Planned length of conductor between source and fuse [mm] */
                distanceMm?: number;
                /** @description Surroundings of the fuse [°C] */
                fuseAmbientC?: components["parameters"]["FuseAmbientC"];
                /** @description Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
                heavyCurrentA?: components["parameters"]["HeavyCurrentA"];
                /** @description The cable links two batteries */
                linksTwoBatteries?: boolean;
                /** @description Continuous load over fuse rating [1] */
                loadRatio?: components["parameters"]["LoadRatio"];
                /** @description External fuse the amplifier’s maker states [A] */
                makerFuseA?: components["parameters"]["MakerFuseA"];
                /** @description Rating [A] */
                "onboardFusesA.0"?: number;
                /** @description Overcurrent to give the operating times of [A] */
                overcurrentA?: number;
                /** @description `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
                policy?: components["parameters"]["Policy"];
                /** @description That piece lies in a conduit or sheath all the way */
                sheathed?: boolean;
                /** @description Capacity of the bank at 20 h [A·h] */
                "source.capacityAh"?: components["parameters"]["SourceCapacityAh"];
                /** @description Kind of battery; with capacityAh in place of the cold cranking current */
                "source.chemistry"?: components["parameters"]["SourceChemistry"];
                /** @description Cold cranking current, from which both ends of the resistance follow [A] */
                "source.coldCrankingA"?: components["parameters"]["SourceColdCrankingA"];
                /** @description Everything between battery and fuse, out and back: for a fuse at a distribution block [Ω] */
                "source.leadOhm"?: number;
                /** @description Open-circuit voltage of the battery [V] */
                "source.openCircuitV"?: components["parameters"]["SourceOpenCircuitV"];
                /** @description Internal resistance of the battery [Ω] */
                "source.resistanceOhm"?: components["parameters"]["SourceResistanceOhm"];
                /** @description Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
                systemVoltageV: components["parameters"]["SystemVoltageV"];
                /** @description Family */
                "types.0"?: components["schemas"]["FuseType"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The result */
            200: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RateFuseAnswer"];
                };
            };
            /** @description The client has this answer already */
            304: {
                headers: {
                    "Cache-Control": components["headers"]["Cache-Control"];
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
    rateFuse: {
        parameters: {
            query?: {
                /** @description `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** @description `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FuseRequest"];
            };
        };
        responses: {
            /** @description The result */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RateFuseAnswer"];
                };
            };
            400: components["responses"]["InvalidRequest"];
            401: components["responses"]["Unauthorised"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["BodyTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["NoSuchDesign"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalError"];
            503: components["responses"]["Unavailable"];
        };
    };
}
