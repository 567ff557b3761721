/** Generated from openapi.yaml by npm run openapi. */
export interface paths {
    "/v1/amplifiers/matching": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["matchAmplifierByQuery"];
        put?: never;
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
        get: operations["wireCoilsByQuery"];
        put?: never;
        post: operations["wireCoils"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs/compare": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["compareDesigns"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs/drivers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["regionOfDrivers"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs/merge": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["mergeDesigns"];
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
        get: operations["completeDriverParametersByQuery"];
        put?: never;
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
        get: operations["sizePortByQuery"];
        put?: never;
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
        get: operations["chooseCableByQuery"];
        put?: never;
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
        get: operations["computeCurrentByQuery"];
        put?: never;
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
        get: operations["rateFuseByQuery"];
        put?: never;
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
        /** What the response of the enclosure showed. */
        AcousticFacts: {
            /** Below this the cone passes its limit at the target power */
            excursionLimitHz?: number;
            /** Lower end of the front loudspeakers */
            mainsLowHz?: number;
            /** Tuning of a port or passive radiator */
            tuningHz?: number;
        };
        /** Either temperature and pressure, or density and speed of sound */
        Air: {
            /** Density */
            densityKgPerM3?: number;
            /** Static pressure */
            pressurePa?: number;
            /** Speed of sound */
            soundSpeedMPerS?: number;
            /** Air temperature */
            temperatureC?: number;
        };
        /**
         * An alignment
         * @enum {string}
         */
        AlignmentId: "closed-qtc" | "sbb4" | "sc4" | "be4" | "qb3" | "b4" | "c4" | "band-pass-4-flat" | "band-pass-4-ripple" | "band-pass-4-edges" | "band-pass-6-search" | "as-asked" | "in-your-space";
        AlignmentMember: {
            alpha: number;
            f3Ratio: number;
            leakQ?: number;
            qts: number;
            tuningRatio: number;
        };
        AlignmentRow: {
            aim: string;
            id: components["schemas"]["AlignmentId"];
            kind: components["schemas"]["EnclosureKind"];
            members: components["schemas"]["AlignmentMember"][];
            name: string;
            source: components["schemas"]["SourceId"];
            validity: string;
        };
        AlignmentsTable: {
            description: string;
            rows: components["schemas"]["AlignmentRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        /**
         * Class of an output stage.
         * @enum {string}
         */
        AmplifierClass: "A" | "AB" | "B" | "D" | "G" | "H";
        AmplifierCurrents: {
            averageA: number;
            averageHeatW: number;
            claimedPowerW?: number;
            class: components["schemas"]["AmplifierClass"];
            efficiency: number;
            fullSineA: number;
            fullSineHeatW: number;
            heavyA: number;
            inputPowerW: number;
            name?: string;
            onboardFuseSumA?: number;
            peakNoStorageA: number;
            plausiblePowerW?: number;
            powerW: number;
            quiescentA: number;
            rippleRmsA: number;
            sizing: components["schemas"]["AmplifierSizing"];
            unregulatedPowerW: number;
        };
        /** An older place of what the supply sees of the amplifier */
        AmplifierDraw: {
            /** Class of the output stage */
            class?: components["schemas"]["AmplifierClass"];
            /** Output over input at rated output, from the data sheet */
            efficiency?: number;
            /** Input current at rated output, from the data sheet */
            inputCurrentA?: number;
            /** Supply voltage of that input current */
            inputVoltageV?: number;
            /** Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** Draw at silence, switched on */
            quiescentW?: number;
            /** Supply voltage of the power rating */
            ratedVoltageV?: number;
            /**
             * Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** Draw when switched off */
            standbyA?: number;
        };
        AmplifierHeat: {
            averageW: number;
            fullSineW: number;
        };
        /** A published output of an amplifier. */
        AmplifierLoadRating: {
            /** Load it is rated into */
            loadOhm: number;
            /** Continuous RMS output, all driven channels together */
            powerW: number;
        };
        /** An amplifier and the drivers it shall drive. */
        AmplifierMatchRequest: {
            amplifier: components["schemas"]["AmplifierSheet"];
            /** How many of the amplifier may be used together */
            amplifierCount?: number;
            /** The cable from each output to its drivers */
            cable?: components["schemas"]["SpeakerCableRequest"];
            driver: components["schemas"]["MatchDriver"];
            /** Drivers */
            driverCount: number;
            /** Power of each output the gain shall be set for, where it is less than amplifier and drivers bear */
            gainPowerW?: number;
            /** Amplifiers to compare it with */
            otherAmplifiers?: components["schemas"]["AmplifierSheet"][];
            /**
             * `power`
             * @enum {string}
             */
            rankBy?: "power" | "price" | "size";
            tone?: components["schemas"]["ToneLevel"];
        };
        AmplifierMatchResult: {
            best?: components["schemas"]["MatchOption"];
            cable?: components["schemas"]["SpeakerCable"];
            gain?: components["schemas"]["MatchGain"];
            heat?: components["schemas"]["AmplifierHeat"];
            options: components["schemas"]["MatchOption"][];
            wiring?: components["schemas"]["MatchWiring"];
        };
        AmplifierPatch: {
            channels: number;
            minimumBridgedOhm: number;
        };
        /** One published power of an amplifier. */
        AmplifierRating: {
            /** Rated with two channels bridged */
            bridged?: boolean;
            /** Load it is rated at */
            loadOhm: number;
            /** Continuous RMS power of one channel, or of the bridged pair */
            powerW: number;
        };
        /** What an amplifier's data sheet says. */
        AmplifierSheet: {
            /** Channels */
            channels?: number;
            /** Class of the output stage, for the heat */
            class?: components["schemas"]["AmplifierClass"];
            /** Output over input at rated output */
            efficiency?: number;
            /** Area it takes where it is mounted */
            footprintCm2?: number;
            /** Lowest load of a bridged pair */
            minimumBridgedOhm?: number;
            /** Lowest load of one channel */
            minimumOhm: number;
            /** Name by which the answer speaks of it */
            name?: string;
            /** Fuses on the amplifier */
            onboardFusesA?: number[];
            /** Price, in any one currency */
            price?: number;
            /** Idle draw */
            quiescentW?: number;
            /** Supply at which the powers are rated, for what the fuses pass */
            ratedVoltageV?: number;
            /** What kind of figure each rating is */
            ratingKind?: components["schemas"]["RatingKind"];
            /** Published powers, one a load */
            ratings: components["schemas"]["AmplifierRating"][];
        };
        AmplifierSizing: {
            fullSineA: number;
            heavyA: number;
            voltageV: number;
        };
        /** One of several equal parts of a search. */
        AskedShard: {
            /** Which part, from 0 */
            index: number;
            /** How many parts there are */
            of: number;
            /** Where other parts have found as many designs as are shown */
            until?: components["schemas"]["SearchTurn"];
        };
        AssemblyStep: {
            parts: string[];
            towards: components["schemas"]["BoxDirection"];
        };
        Assumed: {
            pointer: string;
            value: number | string | boolean;
            why: string;
        };
        /** Every default that was used */
        AssumedList: components["schemas"]["Assumed"][];
        /** A ring behind the cut-out that screws can bite into. */
        BaffleRing: {
            /** Outer diameter */
            outerDiameterMm: number;
            /** Thickness */
            thicknessMm: number;
        };
        /** A tight chamber behind the cone */
        BandPass4: {
            front: components["schemas"]["OpenChamber"];
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "band-pass-4";
            rear: components["schemas"]["ClosedChamber"];
        };
        /** Chambers behind and before the cone, each open to the outside. */
        BandPass6Parallel: {
            front: components["schemas"]["OpenChamber"];
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "band-pass-6-parallel";
            rear: components["schemas"]["OpenChamber"];
        };
        /** The rear chamber opens into the front one, that to the outside. */
        BandPass6Series: {
            front: components["schemas"]["OpenChamber"];
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "band-pass-6-series";
            rear: components["schemas"]["OpenChamber"];
        };
        Basis: {
            formula: string;
            formulaId: string;
            inputs: components["schemas"]["BasisInput"][];
            quantity: string;
            source: components["schemas"]["SourceId"];
            unit: string;
            value: number;
        };
        BasisInput: {
            symbol: string;
            unit: string;
            value: number;
        };
        /** With `?basis=true` */
        BasisList: components["schemas"]["Basis"][];
        BatchAnswer: {
            items: components["schemas"]["BatchItem"][];
            summary: components["schemas"]["BatchSummary"];
        };
        BatchAnswered: {
            answer: {
                [key: string]: unknown;
            };
            id?: string;
            index: number;
            operationId: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            outcome: "answered";
            /** @enum {number} */
            status: 200;
        };
        /** One call of a batch. */
        BatchCall: {
            /** Name of the call */
            id?: string;
            /**
             * Which calculation
             * @enum {string}
             */
            operationId: "completeDriverParameters" | "sizeEnclosure" | "computeResponse" | "computeTolerance" | "compareDesigns" | "sizePort" | "layOutBox" | "checkPanelVibration" | "nestPanels" | "drawBox" | "modelBox" | "wireCoils" | "matchAmplifier" | "computeCurrent" | "chooseCable" | "rateFuse" | "computeFeeder" | "computeCircuit" | "setUpSignal" | "planSystem" | "searchDesigns" | "mergeDesigns" | "regionOfDrivers";
            /** Body of the call, as the operation takes it */
            request: {
                [key: string]: unknown;
            };
        };
        /** What one call of a batch gave. */
        BatchItem: components["schemas"]["BatchAnswered"] | components["schemas"]["BatchRefused"];
        BatchRefused: {
            id?: string;
            index: number;
            operationId: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            outcome: "refused";
            problem: components["schemas"]["Problem"];
            status: number;
        };
        /** Many calls in one */
        BatchRequest: {
            /** The calls, answered in this order */
            calls: components["schemas"]["BatchCall"][];
        };
        BatchSummary: {
            answered: number;
            calls: number;
            fromIndex: number;
            refused: number;
        };
        /**
         * What a battery is made of.
         * @enum {string}
         */
        BatteryChemistry: "flooded" | "agm" | "gel" | "lithium";
        /** The battery that plays with the engine off. */
        BatteryRequest: {
            /** Capacity of the bank at the rated hours */
            capacityAh: number;
            /** Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** Cold cranking current at −18 °C */
            coldCrankingA?: number;
            /** What the parked car draws beside the amplifiers */
            parkedLoadA?: number;
            /** Peukert exponent */
            peukertExponent?: number;
            /** Hours the capacity is printed for */
            ratedHours?: number;
            /** Reserve capacity */
            reserveMinutes?: number;
            /** Internal resistance of the bank */
            resistanceOhm?: number;
            /** Share of the time to empty that may be used */
            usableFraction?: number;
        };
        /** The battery as a source of fault current. */
        BatterySource: {
            /** Capacity of the bank at 20 h */
            capacityAh?: number;
            /** Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** Cold cranking current, from which both ends of the resistance follow */
            coldCrankingA?: number;
            /** Open-circuit voltage of the battery */
            openCircuitV?: number;
            /** Internal resistance of the battery */
            resistanceOhm?: number;
        };
        /** What a row of the bill is */
        BillPart: string;
        BillRow: {
            basis: string;
            /** @enum {string} */
            group: "board" | "joining" | "fittings" | "finish" | "wiring";
            id: string;
            insteadOf?: components["schemas"]["BillPart"];
            item: string;
            need: number;
            needed: boolean;
            part: components["schemas"]["BillPart"];
            quantity: number;
            sold?: components["schemas"]["SoldAs"];
            sparePercent: number;
            specification?: components["schemas"]["BillSpecification"];
            unit: string;
        };
        BillSpecification: {
            areaMm2?: number;
            capacitanceF?: number;
            capacityN?: number;
            designation?: string;
            diameterMm?: number;
            fuseType?: string;
            lengthMm?: number;
            material?: string;
            ratedA?: number;
            resistanceOhm?: number;
            thicknessMm?: number;
            thread?: string;
            widthMm?: number;
        };
        /** The board a box is made of */
        Board: {
            /** Modulus in bending across the face grain */
            acrossModulusGpa?: number;
            /** Density */
            densityKgPerM3?: number;
            /** Modulus in bending, along the face grain */
            elasticModulusGpa?: number;
            /** Board */
            material?: components["schemas"]["BoardId"];
            /** Poisson ratio, strain along to stress across */
            poisson?: number;
            /** Shear modulus in the plane of the board */
            shearModulusGpa?: number;
        };
        /**
         * A board
         * @enum {string}
         */
        BoardId: "mdf" | "birch-plywood" | "poplar-plywood" | "particleboard";
        BoardSheet: {
            lengthMm: number;
            widthMm: number;
        };
        BoardSummary: {
            aboveLeastPercent: number;
            areaBoundSheets: number;
            leastSheetCount: number;
            material?: string;
            panelAreaM2: number;
            panelCount: number;
            /** @enum {string} */
            provedBy: "area" | "large-pieces" | "densest-sheet";
            sheetAreaM2: number;
            sheetCount: number;
            thicknessMm: number;
            why: string;
        };
        BoardThickness: {
            acrossMpa: number;
            alongMpa: number;
            densityKgPerM3: number;
            nominalMm: number;
            realMm: number;
        };
        /** What the box has to pass to get in. */
        BootOpening: {
            /** Clear height */
            heightMm: number;
            /** Clear width */
            widthMm: number;
        };
        BoxAssembly: {
            reach: components["schemas"]["BoxReach"][];
            steps: components["schemas"]["AssemblyStep"][];
            stuck: string[];
        };
        BoxDirection: {
            x: number;
            y: number;
            z: number;
        };
        BoxDrawing: {
            heightMm: number;
            name: string;
            scale: number;
            /** @enum {string} */
            subject: "panel" | "cut-sheet" | "assembly-step" | "template";
            svg: string;
            widthMm: number;
        };
        /** A box to be drawn. */
        BoxDrawingRequest: {
            box: components["schemas"]["BoxRequest"];
            /** How inches are written on paper */
            inches?: components["schemas"]["InchStyle"];
            /** Width of the saw cut */
            kerfMm?: number;
            router?: components["schemas"]["RouterCut"];
            /** Sheets to cut from */
            sheets?: components["schemas"]["SheetStock"][];
            /**
             * What to draw
             * @enum {string}
             */
            show?: "panels" | "cut-sheets" | "both" | "assembly" | "templates";
            /** Title of the set of drawings */
            title?: string;
            /** Cut off every edge of a raw sheet first, kerf included */
            trimMm?: number;
            /** Units on paper */
            units?: components["schemas"]["PaperUnits"];
        };
        BoxDrawings: {
            box: components["schemas"]["BoxLayoutResult"];
            cutPlan?: components["schemas"]["SheetPlanResult"];
            drawings: components["schemas"]["BoxDrawing"][];
            inches: components["schemas"]["InchStyle"];
            routing?: components["schemas"]["Routing"];
            title: string;
            units: components["schemas"]["PaperUnits"];
        };
        /** Equal drivers to be set into the box */
        BoxDriver: {
            /** Centre of each driver */
            centres?: components["schemas"]["PlaceOnPanel"][];
            /** Drivers of this kind */
            count?: number;
            /** Hole */
            cutOutDiameterMm?: number;
            /** Air one driver takes from the box, as sheets give it for a magnet inside */
            displacementL?: number;
            /** Face that carries the driver */
            face?: components["schemas"]["FaceName"];
            /** Outer diameter */
            flangeDiameterMm?: number;
            /**
             * Driver, or cone without a motor that plays as a port does
             * @enum {string}
             */
            kind?: "driver" | "passive-radiator";
            /** Name on the drawing */
            label?: string;
            /** Diameter of the motor */
            magnetDiameterMm?: number;
            /** Height of the motor */
            magnetHeightMm?: number;
            /** Mass of one driver */
            massKg?: number;
            /**
             * `reversed` puts the magnet outside
             * @enum {string}
             */
            mount?: "front" | "reversed";
            /** Outer face of the baffle to the rear of the motor */
            mountingDepthMm?: number;
            /** Rebate that lets the flange in */
            rebateDepthMm?: number;
            ring?: components["schemas"]["BaffleRing"];
            /** Circle of the fixing screws */
            screwCircleDiameterMm?: number;
            /** Fixing screws */
            screwCount?: number;
            /** Cone area */
            sdCm2?: number;
            /** Hole through the pole piece */
            ventDiameterMm?: number;
            /** Diameter of the voice coil */
            voiceCoilDiameterMm?: number;
            /** Excursion one way */
            xmaxMm?: number;
        };
        BoxedDrivers: {
            count: number;
            ebpHz: number;
            fsHz: number;
            qts: number;
            qtsWithSource: number;
            vasL: number;
        };
        BoxFit: {
            clearOfKeepOuts?: boolean;
            opening?: components["schemas"]["BoxThroughOpening"];
            place?: components["schemas"]["BoxPlace"];
            spare: components["schemas"]["BoxSpare"][];
        };
        /** Things in the box beside drivers and ports. */
        BoxFittings: {
            amplifier?: components["schemas"]["InsideAmplifier"];
            cleats?: components["schemas"]["Cleats"];
            lining?: components["schemas"]["Lining"];
            terminal?: components["schemas"]["TerminalCup"];
        };
        BoxInnerSize: {
            depthMm: number;
            heightMm: number;
            widthMm: number;
        };
        /**
         * Kind of box a plan can be made for.
         * @enum {string}
         */
        BoxKind: "closed" | "vented" | "passive-radiator" | "band-pass-4";
        BoxLayoutResult: {
            assembly: components["schemas"]["BoxAssembly"];
            boardAreaM2: number;
            boardMassKg: number;
            centreOfGravity: components["schemas"]["BoxPoint"];
            chambers?: components["schemas"]["Chamber"][];
            clearances: components["schemas"]["Clearance"][];
            fit?: components["schemas"]["BoxFit"];
            inner: components["schemas"]["BoxInnerSize"];
            massKg: number;
            outer: components["schemas"]["BoxOuterSize"];
            panels: components["schemas"]["Panel"][];
            port?: components["schemas"]["PortLayout"];
            shape: components["schemas"]["BoxShape"];
            standingWaves: components["schemas"]["BoxStandingWave"][];
            vibration: components["schemas"]["BoxVibration"];
            volume: components["schemas"]["VolumeBalance"];
        };
        /** The space the box may take. */
        BoxLimits: {
            /** Play on every side */
            clearanceMm?: number;
            /** Carpet on every face */
            coveringMm?: number;
            /** Deepest, at the floor */
            depthMm?: number;
            /** Highest */
            heightMm?: number;
            /** Wheel arches and other blocks in the way */
            keepOuts?: components["schemas"]["KeepOut"][];
            opening?: components["schemas"]["BootOpening"];
            /** Lean of the seat back from the vertical, into the boot */
            seatSlopeDeg?: number;
            /** Widest */
            widthMm?: number;
        };
        BoxModel: {
            bodies: components["schemas"]["ModelBody"][];
        };
        BoxOuterSize: {
            acrossSlopeDeg?: number;
            depthMm: number;
            heightMm: number;
            lidSlopeDeg?: number;
            slopeDeg?: number;
            topDepthMm?: number;
            widthMm: number;
        };
        /** Outer sizes that are fixed */
        BoxOuterWish: {
            /** Depth, of a wedge at its floor */
            depthMm?: number;
            /** Height, of a sloping lid at its highest */
            heightMm?: number;
            /** Depth of a wedge at its lid */
            topDepthMm?: number;
            /** Width */
            widthMm?: number;
        };
        BoxPatch: {
            enclosure: {
                airSpeedMPerS?: number;
                frontVolumeL?: number;
                goal: null;
                kind?: components["schemas"]["BoxKind"];
                netVolumeL?: number;
                portAreaCm2?: number;
                portFace?: components["schemas"]["ShellFace"];
                portFlareMm?: number;
                portShape?: components["schemas"]["PortShape"];
                radiatorCount?: number;
                radiatorFace?: components["schemas"]["RadiatorFace"];
                tuningHz?: number;
            };
            signal?: {
                gainPowerW: number;
            };
        };
        BoxPlace: {
            xMm: number;
            yMm: number;
        };
        BoxPoint: {
            xMm: number;
            yMm: number;
            zMm: number;
        };
        /** A port as it is to be built. */
        BoxPort: components["schemas"]["RoundPort"] | components["schemas"]["SlotPort"];
        BoxReach: {
            lengthMm?: number;
            part: string;
            through?: string;
        };
        /** A box by its outer sizes, or by the net volume it shall hold. */
        BoxRequest: {
            /** Of a wedge by its slope */
            acrossSlopeDeg?: number;
            air?: components["schemas"]["Air"];
            board?: components["schemas"]["Board"];
            bracing?: components["schemas"]["BracingWish"];
            displacement?: components["schemas"]["GivenDisplacement"];
            divider?: components["schemas"]["Divider"];
            /** Drivers */
            drivers?: components["schemas"]["BoxDriver"][];
            fittings?: components["schemas"]["BoxFittings"];
            /** Boards of the front */
            frontLayers?: number;
            joints?: components["schemas"]["Joints"];
            /** Of a wedge by its slope */
            lidSlopeDeg?: number;
            limits?: components["schemas"]["BoxLimits"];
            /** Air wanted inside, everything taken off */
            netVolumeL?: number;
            outer?: components["schemas"]["BoxOuterWish"];
            port?: components["schemas"]["BoxPort"];
            prism?: components["schemas"]["Prism"];
            /** Front set back behind the edges round it */
            recessMm?: number;
            /** Step the saw is set by */
            sawStepMm?: number;
            /** Shape */
            shape?: components["schemas"]["BoxShape"];
            /** Lean of that face from the vertical */
            slopeDeg?: number;
            /**
             * Of a wedge
             * @enum {string}
             */
            slopedFace?: "front" | "back";
            /** Which way the box grows */
            strategy?: components["schemas"]["BoxStrategy"];
            /** Board of all panels, as measured */
            thicknessMm: number;
        };
        /**
         * Shape of a box.
         * @enum {string}
         */
        BoxShape: "rectangular" | "wedge" | "prism";
        BoxSpare: {
            /** @enum {string} */
            axis: "width" | "height" | "depth";
            limitMm: number;
            sizeMm: number;
            spareMm: number;
        };
        BoxStandingWave: {
            /** @enum {string} */
            along: "width" | "height" | "depth";
            frequencyHz: number;
            insideMm: number;
        };
        /**
         * Which way a box grows where there is a choice.
         * @enum {string}
         */
        BoxStrategy: "balanced" | "lowest" | "shallowest" | "narrowest";
        BoxThroughOpening: {
            /** @enum {string} */
            face: "front" | "side" | "lid" | "none";
            passes: boolean;
            tilted: boolean;
        };
        BoxVibration: {
            faces: components["schemas"]["FaceVibration"][];
            movedSharePercent?: number;
            pressurePa?: number;
            wantedHz: number;
        };
        /** Present, even empty */
        BracingWish: {
            /** Peak pressure inside, e.g */
            pressurePa?: number;
            /** Top of the band the box plays */
            upperHz?: number;
        };
        BranchSelectivity: {
            branchRatingA: number;
            ratio: number;
            selective: boolean;
            stretch: string;
        };
        BuildOrder: {
            batteryOffDay: number;
            days: components["schemas"]["WorkDay"][];
            elapsedMinutes: number;
            practisedDays: number;
            practisedMinutes: number;
            steps: components["schemas"]["BuildStep"][];
            ways: components["schemas"]["BuildWay"][];
            workMinutes: number;
        };
        BuildStep: {
            actions: string[];
            cautions: components["schemas"]["CautionCode"][];
            checks: string[];
            cureMinutes: number;
            id: string;
            makes: ("driver" | "amplifier" | "sheet" | "panel" | "wood-screw" | "layer-screw" | "glue" | "sealant" | "driver-screw" | "t-nut" | "gasket" | "port-tube" | "passive-radiator" | "radiator-weight" | "terminal-cup" | "cup-screw" | "foot" | "strap" | "anchor-bolt" | "port-paint" | "lining" | "lining-adhesive" | "carpet" | "carpet-adhesive" | "edge-sealer" | "filler" | "abrasive" | "inside-wire" | "receptacle" | "speaker-wire" | "turn-on-wire" | "signal-lead" | "splice" | "signal-ferrule" | "line-converter" | "power-cable" | "return-cable" | "fuse" | "fuse-holder" | "ring-lug" | "power-ferrule" | "sleeve" | "grommet" | "clip" | "distribution-block" | "capacitor" | "charging-resistor" | "second-battery" | "battery-tray" | "second-battery-link" | "converter" | "turn-on-relay" | "turn-on-fuse" | "amplifier-bolt" | "ground-bolt" | "metal-guard" | "sheath" | "cable-label" | "cut-panel" | "brace" | "port-walls" | "shell" | "closed-box" | "finished-box")[];
            minutes: number;
            needs: string[];
            number: number;
            /** @enum {string} */
            place: "table" | "bench" | "car";
            substitutes: string[];
            title: string;
            tools: string[];
            uses: ("driver" | "amplifier" | "sheet" | "panel" | "wood-screw" | "layer-screw" | "glue" | "sealant" | "driver-screw" | "t-nut" | "gasket" | "port-tube" | "passive-radiator" | "radiator-weight" | "terminal-cup" | "cup-screw" | "foot" | "strap" | "anchor-bolt" | "port-paint" | "lining" | "lining-adhesive" | "carpet" | "carpet-adhesive" | "edge-sealer" | "filler" | "abrasive" | "inside-wire" | "receptacle" | "speaker-wire" | "turn-on-wire" | "signal-lead" | "splice" | "signal-ferrule" | "line-converter" | "power-cable" | "return-cable" | "fuse" | "fuse-holder" | "ring-lug" | "power-ferrule" | "sleeve" | "grommet" | "clip" | "distribution-block" | "capacitor" | "charging-resistor" | "second-battery" | "battery-tray" | "second-battery-link" | "converter" | "turn-on-relay" | "turn-on-fuse" | "amplifier-bolt" | "ground-bolt" | "metal-guard" | "sheath" | "cable-label" | "cut-panel" | "brace" | "port-walls" | "shell" | "closed-box" | "finished-box")[];
            warnings: string[];
        };
        BuildWay: {
            cutMm: number;
            holeMm: number;
            netVolumePercent: number;
            substitutes: string[];
            taken: boolean;
            tools: string[];
            tuningPercent?: number;
            /** @enum {string} */
            way: "saw-and-router" | "cutting-service" | "jigsaw-and-drill";
            workMinutes: number;
        };
        BuyLine: {
            id: string;
            item: string;
            quantity: number;
            unit: string;
        };
        /** The car around the seat */
        Cabin: {
            /** Q of the corner below which the level rises */
            cornerQ?: number;
            /** Corner below which leaks stop the rise */
            leakCornerHz?: number;
            /** Q of that corner */
            leakQ?: number;
            /** Longest inner dimension of the cabin */
            lengthM?: number;
            measured?: components["schemas"]["MeasuredTransfer"];
            /** Air volume of the cabin, boot included if open to it */
            volumeL?: number;
        };
        CabinModel: {
            cornerHz?: number;
            leakCornerHz?: number;
            lowestModeHz?: number;
            /** @enum {string} */
            model: "pressure-vessel" | "measured";
            uncertaintyDb: number;
        };
        CableAmpacity: {
            ampacityA: number;
            insulationC: number;
        };
        CableCandidate: {
            ampacityA?: number;
            areaMm2: number;
            currentA?: number;
            designation: string;
            diameterMm: number;
            dropPercent?: number;
            dropV?: number;
            endVoltageV?: number;
            fails: components["schemas"]["CableLimit"][];
            faultA?: number;
            highestFuseA?: number;
            loopOhm: number;
            lossW?: number;
            ohmPerM: number;
        };
        /**
         * What decides the size of a cable.
         * @enum {string}
         */
        CableLimit: "drop" | "ampacity" | "fuse" | "short-circuit" | "terminal";
        CableLoad: {
            currentA: number;
            powerW: number;
        };
        /** A feeder that wants a cable and a fuse */
        CableRequest: {
            /** Hottest surroundings along the run */
            ambientC?: number;
            /** Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** Limits to hold the sizes to */
            checks?: components["schemas"]["CableLimit"][];
            /** Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            /** Conductor temperature the drop is judged at */
            conductorTemperatureC?: number;
            /** Contact resistance that counts into the drop, once in the loop */
            contactOhm?: number;
            /** Test tones or sustained notes */
            continuousTone?: boolean;
            /** Current at full sine */
            currentA?: number;
            /** Largest drop on the conductors, of nominal voltage */
            dropLimitPercent?: number;
            /** The same in volts */
            dropLimitV?: number;
            /** Voltage at which the amplifier’s converter stops */
            dropOutV?: number;
            /** Fuse that is already there */
            fuseA?: number;
            /** Surroundings of the fuse */
            fuseAmbientC?: number;
            /** Fuse families allowed */
            fuseTypes?: components["schemas"]["FuseType"][];
            /** Power the next amplifier will draw */
            futureLoadPowerW?: number;
            /** Series of the size */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** Current of dense bass music (1/3 of rated output), for the heating of the fuse */
            heavyCurrentA?: number;
            /** Temperature class printed on the insulation */
            insulationC?: number;
            /** What the insulation is made of */
            insulationMaterial?: components["schemas"]["InsulationMaterial"];
            /** One lug */
            jointOhm?: number;
            /**
             * `constant-current`
             * @enum {string}
             */
            loadModel?: "constant-current" | "constant-power";
            /** Power drawn at full sine (not put out) */
            loadPowerW?: number;
            /** Continuous load over fuse rating */
            loadRatio?: number;
            /** External fuse the amplifier’s maker states */
            makerFuseA?: number;
            /** Where a metric copper size takes its resistance from */
            metricResistance?: components["schemas"]["MetricResistance"];
            /** Fuses on the amplifier */
            onboardFusesA?: number[];
            /** `strict` */
            policy?: components["schemas"]["FusePolicy"];
            /** Conductor length of the positive run */
            positiveLengthM: number;
            /** Supply voltage that the amplifier at the end is rated at */
            ratedVoltageV?: number;
            /** Resistivity at 20 °C in place of the metal’s */
            resistivityOhmM?: number;
            return: components["schemas"]["ReturnPath"];
            /** Equal cables side by side, each with a fuse of its own */
            runs?: number;
            shortCircuit?: components["schemas"]["ShortCircuitRequest"];
            /** Sizes to choose from */
            sizes?: string[];
            source?: components["schemas"]["BatterySource"];
            /** Voltage at the start of the run, when not the nominal one */
            sourceVoltageV?: number;
            /** Spaces the run passes */
            spaces?: components["schemas"]["RunSpace"][];
            /** Resistance of the stranded over the solid conductor */
            strandingFactor?: number;
            /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58) */
            systemVoltageV: number;
            /** Temperature coefficient at 20 °C in place of the metal’s */
            temperatureCoefficientPerK?: number;
            /** Largest conductor the amplifier’s terminal takes */
            terminalAreaMm2?: number;
        };
        CableResult: {
            amplifierVoltageV?: number;
            cable?: components["schemas"]["ChosenCable"];
            candidates: components["schemas"]["CableCandidate"][];
            collapseMargin?: number;
            fuse?: components["schemas"]["ChosenFuse"];
            ground: components["schemas"]["GroundAdvice"];
            load: components["schemas"]["CableLoad"];
            minimumAreaMm2?: number;
            parallel?: components["schemas"]["ParallelRuns"];
            shortCircuit?: components["schemas"]["ShortCircuitAnswer"];
            upsized?: components["schemas"]["UpsizedCable"];
        };
        CableRow: {
            ampacities: components["schemas"]["CableAmpacity"][];
            areaMm2: number;
            designation: string;
            gaugeSystem: components["schemas"]["GaugeSystem"];
            ohmPerM: number;
        };
        CablesTable: {
            description: string;
            rows: components["schemas"]["CableRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        Calculation: {
            digest: string;
            version: string;
        };
        CandidateResponse: {
            f3Hz?: number;
            f3UpperHz?: number;
            f10Hz?: number;
            groupDelayAtF3Ms?: number;
            levels: components["schemas"]["ComparedLevel"][];
            peakDb: number;
            rippleDb: number;
        };
        CapacitorEffect: {
            cornerHz?: number;
            esrStepV?: number;
            holdUpMs: number;
            precharge99S?: number;
            prechargeDoneS?: number;
            prechargeOhm?: number;
            prechargePeakW?: number;
            prechargeTimeConstantS?: number;
            storedJ: number;
            usableJ: number;
        };
        CapacitorGuard: {
            id: string;
            inrushA: number;
            prechargeDoneS: number;
            prechargeOhm: number;
            storedJ: number;
            voltageV: number;
        };
        /** A stiffening capacitor at the amplifiers. */
        CapacitorRequest: {
            /** Capacitance */
            capacitanceF: number;
            /** Series resistance of the capacitor */
            esrOhm?: number;
            /** Voltage it is charged to */
            fromV?: number;
            /** Resistor it is charged through at first */
            prechargeOhm?: number;
            /** Resistance between source and capacitor */
            sourceOhm?: number;
            /** Voltage it may fall to */
            toV?: number;
        };
        Caution: {
            at?: string;
            code: components["schemas"]["CautionCode"];
            figures?: {
                [key: string]: number;
            };
            level: components["schemas"]["CautionLevel"];
            message: string;
        };
        CautionCatalogue: {
            cautions: components["schemas"]["CautionKind"][];
        };
        /** Code of a caution */
        CautionCode: string;
        CautionKind: {
            basis: string;
            brief?: string;
            code: string;
            level: string;
            meaning: string;
            templates: components["schemas"]["SentenceTemplate"][];
        };
        /**
         * `note`
         * @enum {string}
         */
        CautionLevel: "note" | "care" | "stop";
        CautionLine: {
            code: components["schemas"]["CautionCode"];
            level: components["schemas"]["CautionLevel"];
            message: string;
        };
        /** Doubts and dangers, the gravest first */
        CautionList: components["schemas"]["Caution"][];
        Chamber: {
            displacedL: number;
            grossL: number;
            name: components["schemas"]["ChamberName"];
            netL: number;
        };
        /**
         * A chamber of an enclosure.
         * @enum {string}
         */
        ChamberName: "rear" | "front";
        Changes: {
            versions: components["schemas"]["VersionChanges"][];
        };
        ChargingBalance: {
            baseLoadA: number;
            cruiseAvailableA: number;
            cruiseAverageSurplusA: number;
            cruiseHeavySurplusA: number;
            idleAvailableA: number;
            idleAverageSurplusA: number;
            idleHeavySurplusA: number;
        };
        /** What charges the vehicle while it runs. */
        ChargingRequest: {
            /** What the vehicle itself draws while it runs */
            baseLoadA?: number;
            /** The same while driving */
            drivingShaftPerMin?: number;
            /** Output of an alternator hot over cold */
            hotFactor?: number;
            /** Output of an alternator at idle from the rating line, cold */
            idleA?: number;
            /** Output of an alternator at idle over rated output */
            idleFraction?: number;
            /** Speed of its shaft at idle, engine speed times pulley ratio */
            idleShaftPerMin?: number;
            /**
             * Alternator, or a DC-DC converter
             * @enum {string}
             */
            kind: "alternator" | "converter";
            /** Rated output current at system voltage */
            ratedA: number;
        };
        /**
         * What the body of the vehicle is made of.
         * @enum {string}
         */
        ChassisBody: "steel" | "aluminium" | "composite" | "unknown";
        CheckPanelVibrationAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["PanelVibrationResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        ChooseCableAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["CableResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        ChooseCableDone: {
            answer: components["schemas"]["ChooseCableAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["CableRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/supply/cables gives, or why not. */
        ChooseCablePart: components["schemas"]["ChooseCableDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        ChosenCable: {
            ampacityA?: number;
            areaMm2: number;
            conductorC: number;
            currentA?: number;
            designation: string;
            diameterMm: number;
            dropPercent?: number;
            dropV?: number;
            endVoltageV?: number;
            faultA?: number;
            /** @enum {string} */
            governedBy: "drop" | "ampacity" | "fuse" | "short-circuit" | "terminal" | "smallest-size";
            highestFuseA?: number;
            hotLossW: number;
            hotTotalDropPercent: number;
            hotTotalDropV: number;
            loopOhm: number;
            lossW?: number;
            ohmPerM: number;
        };
        ChosenFuse: {
            breakingA: number;
            form: string;
            placement: components["schemas"]["FusePlacement"];
            ratingA: number;
            standard: string;
            type: components["schemas"]["FuseType"];
            voltageV: number;
        };
        /** The vehicle’s own load, or another with a steady current. */
        CircuitAccessory: {
            /** While the engine runs */
            currentA: number;
            /** Name of this part, once in the circuit */
            id: string;
            /** Point of its minus pole */
            minus: string;
            /** While it stands */
            parkedA?: number;
            /** Point of its plus pole */
            plus: string;
        };
        /** An alternator with its regulator, or a charger from the mains or the traction battery. */
        CircuitAlternator: {
            /** Most it gives when driving, hot */
            drivingA: number;
            /** Highest it may hold */
            highestSetV?: number;
            /** Name of this part, once in the circuit */
            id: string;
            /** Most it gives at idle, hot */
            idleA: number;
            /** Lowest it may hold, where the vehicle governs it */
            lowestSetV?: number;
            /** Point of its minus pole */
            minus: string;
            /** Point of its plus pole */
            plus: string;
            /** Voltage it holds */
            setV: number;
            /** Fall of its voltage with its current */
            slopeOhm?: number;
        };
        /** An amplifier between two points. */
        CircuitAmplifier: {
            /** Class of the output stage */
            class?: components["schemas"]["AmplifierClass"];
            /** Voltage at which its converter stops */
            dropOutV?: number;
            /** Output over input at rated output, from the data sheet */
            efficiency?: number;
            /** RMS output its gain is set for, where that is less than it can give */
            gainPowerW?: number;
            /** Name of this part, once in the circuit */
            id: string;
            /** Input current at rated output, from the data sheet */
            inputCurrentA?: number;
            /** Supply voltage of that input current */
            inputVoltageV?: number;
            /** Load wired to it */
            loadOhm?: number;
            /** Point of its minus pole */
            minus: string;
            /** Name for the answer */
            name?: string;
            /** Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** Point of its plus pole */
            plus: string;
            /** Continuous RMS output of all driven channels into the wired load */
            powerW?: number;
            /** Draw at silence, switched on */
            quiescentW?: number;
            /** What the power stands for */
            ratedAs?: components["schemas"]["RatedPower"];
            /** Supply voltage of the power rating */
            ratedVoltageV?: number;
            /** Published outputs by load */
            ratings?: components["schemas"]["AmplifierLoadRating"][];
            /**
             * Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** Draw when switched off */
            standbyA?: number;
        };
        /** A battery */
        CircuitBattery: {
            /** Capacity of the bank at 20 h */
            capacityAh?: number;
            /** Its resistance while it takes current */
            chargingOhm?: number;
            /** Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** Cold cranking current, from which both ends of the resistance follow */
            coldCrankingA?: number;
            /** Name of this part, once in the circuit */
            id: string;
            /** Point of its minus pole */
            minus: string;
            /** Open-circuit voltage of the battery */
            openCircuitV?: number;
            /** Point of its plus pole */
            plus: string;
            /** Internal resistance of the battery */
            resistanceOhm?: number;
        };
        /** One cable */
        CircuitCable: {
            /** Hottest surroundings along the run */
            ambientC?: number;
            /** Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            /** Size with its series */
            designation: string;
            /** Point it starts at */
            from: string;
            /** Series of the size */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** Name of this part, once in the circuit */
            id: string;
            /** Temperature class printed on the insulation */
            insulationC?: number;
            /** One of them */
            jointOhm?: number;
            /** Lugs and contacts on it */
            joints?: number;
            /** Conductor length */
            lengthM: number;
            /** Where a metric copper size takes its resistance from */
            metricResistance?: components["schemas"]["MetricResistance"];
            /** Resistivity at 20 °C in place of the metal’s */
            resistivityOhmM?: number;
            /** Whether it lies in a conduit all the way */
            sheathed?: boolean;
            /** Spaces the run passes */
            spaces?: components["schemas"]["RunSpace"][];
            /** Resistance of the stranded over the solid conductor */
            strandingFactor?: number;
            /** Temperature coefficient at 20 °C in place of the metal’s */
            temperatureCoefficientPerK?: number;
            /** Point it ends at */
            to: string;
        };
        CircuitCableGuard: {
            ampacityA?: number;
            fromEndA?: number;
            fromStartA?: number;
            guarded: boolean;
            id: string;
            loadA?: number;
        };
        /** A stiffening capacitor */
        CircuitCapacitor: {
            /** Capacitance */
            capacitanceF: number;
            /** Its series resistance */
            esrOhm?: number;
            /** Name of this part, once in the circuit */
            id: string;
            /** Point of its minus pole */
            minus: string;
            /** Point of its plus pole */
            plus: string;
            /** Resistor it is charged through */
            prechargeOhm?: number;
            /** Voltage its maker rates it for */
            ratedVoltageV?: number;
        };
        /** A converter or charger from one voltage to another */
        CircuitConverter: {
            /** Output over input */
            efficiency?: number;
            /** Most it draws */
            highestInputA?: number;
            /** Input that its maker allows */
            highestInputV?: number;
            /** Name of this part, once in the circuit */
            id: string;
            /** What it takes with nothing at its output */
            idleW?: number;
            /** Point of the minus of its input */
            inMinus: string;
            /** Point of its input */
            inPlus: string;
            /** Input below which it stops */
            lowestInputV?: number;
            /** Whether it rests while the engine stands */
            onlyWithEngine?: boolean;
            /** Point of the minus of its output */
            outMinus: string;
            /** Point of its output */
            outPlus: string;
            /** Most it gives at its output */
            ratedA: number;
            /** Voltage it holds at its output */
            setV: number;
            /** Fall of its voltage with its current */
            slopeOhm?: number;
        };
        /** A fuse between two points */
        CircuitFuse: {
            /** What its maker says it breaks */
            breakingA?: number;
            /** Point it starts at */
            from: string;
            /** Name of this part, once in the circuit */
            id: string;
            /** Voltage its maker rates it for */
            ratedVoltageV?: number;
            /** Rating */
            ratingA: number;
            /** Its resistance */
            resistanceOhm?: number;
            /** Point it ends at */
            to: string;
            /** Family */
            type?: components["schemas"]["FuseType"];
        };
        CircuitFuseGuard: {
            breakingA?: number;
            heavyA?: number;
            id: string;
            loadA?: number;
            prospectiveA: number;
        };
        /** Anything else that conducts */
        CircuitLink: {
            /** Whether that figure is a guess */
            assumed?: boolean;
            /** Point it starts at */
            from: string;
            /** Name of this part, once in the circuit */
            id: string;
            /** Most it lets through by itself, into a fault too */
            limitA?: number;
            /** A relay that opens while the engine stands */
            opensWithoutEngine?: boolean;
            /** Its resistance */
            resistanceOhm: number;
            /** Point it ends at */
            to: string;
        };
        /** A circuit */
        CircuitRequest: {
            /** Other loads */
            accessories?: components["schemas"]["CircuitAccessory"][];
            /** Alternators and chargers */
            alternators?: components["schemas"]["CircuitAlternator"][];
            /** Amplifiers */
            amplifiers: components["schemas"]["CircuitAmplifier"][];
            /** Batteries */
            batteries: components["schemas"]["CircuitBattery"][];
            /** Cables */
            cables?: components["schemas"]["CircuitCable"][];
            /** Capacitors */
            capacitors?: components["schemas"]["CircuitCapacitor"][];
            /** Of the cables while the voltages are read */
            conductorTemperatureC?: number;
            /** Converters and chargers from one voltage to another */
            converters?: components["schemas"]["CircuitConverter"][];
            /** Fuses */
            fuses?: components["schemas"]["CircuitFuse"][];
            /** Other conductors */
            links?: components["schemas"]["CircuitLink"][];
            starter?: components["schemas"]["CircuitStarter"];
            /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58) */
            systemVoltageV: number;
        };
        CircuitResult: {
            bareSources: string[];
            cables: components["schemas"]["CircuitCableGuard"][];
            capacitors?: components["schemas"]["CapacitorGuard"][];
            collapseMargin?: number;
            farFaults: components["schemas"]["FarFault"][];
            fuses: components["schemas"]["CircuitFuseGuard"][];
            series: components["schemas"]["FuseSeries"][];
            states: components["schemas"]["CircuitState"][];
        };
        /** The starter */
        CircuitStarter: {
            /** Point of its minus pole */
            minus: string;
            /** Point of its plus pole */
            plus: string;
            /** Its resistance while it turns the cold engine */
            resistanceOhm: number;
        };
        CircuitState: {
            /** @enum {string} */
            engine: "idling" | "driving" | "cranking" | "off";
            /** @enum {string} */
            level: "silence" | "average" | "heavy" | "full-sine" | "cold-start";
            parts: components["schemas"]["PartCurrent"][];
            points: components["schemas"]["PointVoltage"][];
            stands: boolean;
            stopped?: string[];
            sustainableShare?: number;
            withoutSupply: string[];
        };
        Clearance: {
            availableMm: number;
            between: string;
            neededMm: number;
            passes: boolean;
            why: string;
        };
        /** Square rod glued along inner edges. */
        Cleats: {
            /** Length of all rods together */
            lengthMm: number;
            /** Side of the rod */
            sideMm: number;
        };
        /** One tight chamber behind the cone. */
        ClosedBox: {
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "closed";
            rear: components["schemas"]["ClosedChamber"];
        };
        /** A chamber without opening. */
        ClosedChamber: {
            /** Q of the absorption at the frequency of the chamber */
            absorptionQ?: number;
            /** Q of the leak to the outside at the frequency of the chamber */
            leakQ?: number;
            /** Acoustic volume for all drivers together */
            netVolumeL: number;
        };
        CoilArrangement: {
            allowed?: boolean;
            /** @enum {string} */
            coilsInDriver: "single" | "series" | "parallel" | "series-parallel";
            driversInSeries: number;
            join: string;
            ohm: number;
            parallelStrings: number;
            ratio: string;
        };
        /**
         * How the coils of a driver are joined.
         * @enum {string}
         */
        CoilConnection: "one-coil" | "series" | "parallel" | "series-parallel";
        CoilHeating: {
            ambientC: number;
            coilHeatW: number;
            coilKPerW: number;
            compressionDb: number;
            magnetKPerW: number;
            maximumCoilC: number;
            /** @enum {string} */
            metal: "copper" | "aluminium";
            steadyCoilC: number;
            steadyReOhm: number;
            warming?: components["schemas"]["WarmingMoment"][];
        };
        /** The way of the heat */
        CoilHeatingRequest: {
            /** Temperature around the driver */
            ambientC?: number;
            /** Thermal resistance from one coil to its magnet */
            coilKPerW?: number;
            /** Time constant of the coil */
            coilTimeConstantS?: number;
            /** Thermal resistance from the magnet to the air */
            magnetKPerW?: number;
            /** Time constant of the magnet */
            magnetTimeConstantS?: number;
            /** What the coil stands */
            maximumCoilC?: number;
            /**
             * What the coil is wound of
             * @enum {string}
             */
            metal?: "copper" | "aluminium";
        };
        CoilJoint: {
            name: string;
            terminals: string[];
        };
        CoilLoad: {
            allowed?: boolean;
            balanced: boolean;
            coilPowerW?: number;
            hottestCoilPowerW?: number;
            join: string;
            ohm: number;
            ratio?: string;
            shares?: number[];
        };
        CoilsPatch: {
            coils: {
                ratedOhm: number;
            };
        };
        CoilWiringChosen: {
            join: string;
            joints: components["schemas"]["CoilJoint"][];
            ohm: number;
            reOhm?: number;
            steps: string[];
            why: string;
        };
        /** The coils of one or more drivers, to be joined to one load. */
        CoilWiringRequest: {
            /** The cable from the amplifier to the coils */
            cable?: components["schemas"]["SpeakerCableRequest"];
            /** Lowest load of ONE channel of a pair that is to be bridged */
            channelMinimumOhm?: number;
            /** Rated impedance of one coil, when all coils are alike */
            coilOhm?: number;
            /** Direct-current resistance of one coil, for like coils */
            coilReOhm?: number;
            /** Rated impedance of every coil when they differ, driver by driver */
            coilsOhm?: number[];
            /** Voice coils of each driver */
            coilsPerDriver: number;
            /** Drivers */
            driverCount: number;
            /** Lowest load the output may drive, as the data sheet states it for the way it is used */
            minimumOhm?: number;
            /** Load wished for */
            targetOhm?: number;
            /** Power into the whole load */
            totalPowerW?: number;
        };
        CoilWiringResult: {
            arrangements?: components["schemas"]["CoilArrangement"][];
            cable?: components["schemas"]["SpeakerCable"];
            cableCandidates?: components["schemas"]["SpeakerCableCandidate"][];
            chosen?: components["schemas"]["CoilWiringChosen"];
            coilCount: number;
            coilPowerW?: number;
            distinctLoadCount: number;
            driverPowerW?: number;
            loads: components["schemas"]["CoilLoad"][];
            lowestAllowedOhm?: number;
            lowestLoadOhm?: number;
            nearestOhm?: number;
            networkCount?: number;
        };
        CommissioningStep: {
            cautions: components["schemas"]["CautionCode"][];
            id: string;
            minutes: number;
            number: number;
            passIf: string;
            /** @enum {string} */
            stage: "power" | "gain" | "sound" | "proof";
            text: string;
            title: string;
            tools: string[];
            uses?: components["schemas"]["BillPart"][];
        };
        CompactPlan: {
            buy: components["schemas"]["BuyLine"][];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionLine"][];
            name?: string;
            sentence: string;
            steps: components["schemas"]["StepLine"][];
            summary: components["schemas"]["PlanSummary"];
        };
        ComparedCurves: {
            coneExcursionMm: number[];
            groupDelayMs: number[];
            impedanceOhm: number[];
            levelDb: number[];
            mostLevelDb?: number[];
            portAirSpeedMPerS?: number[];
        };
        /** One of several designs, as a response takes it. */
        ComparedDesign: {
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            enclosure: components["schemas"]["Enclosure"];
            /** Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            limits?: components["schemas"]["Limits"];
            /** What it is called here */
            name: string;
            source: components["schemas"]["Source"];
        };
        CompareDesignsAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["DesignComparisonResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        ComparedFigures: {
            coneExcursionMm: number;
            f3Hz?: number;
            groupDelayMs: number;
            impedanceOhm: number;
            levelsDb: number[];
            mostLevelsDb?: number[];
            netVolumeL?: number;
            portAirSpeedMPerS?: number;
            qtc?: number;
            tuningHz?: number;
            voltageV: number;
        };
        ComparedLevel: {
            frequencyHz: number;
            relativeDb: number;
        };
        CompletedDriver: {
            blTm: number;
            cmsMmPerN: number;
            fsHz: number;
            leMh?: number;
            leParallelOhm?: number;
            mmsG: number;
            powerW?: number;
            qes: number;
            qms: number;
            qts: number;
            reOhm: number;
            rmsKgPerS: number;
            sdCm2: number;
            vasAir?: components["schemas"]["VasAir"];
            vasL: number;
            xmaxMm?: number;
        };
        CompleteDriverParametersAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["DriverParametersResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        CompleteDriverParametersDone: {
            answer: components["schemas"]["CompleteDriverParametersAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["DriverParametersRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/drivers/parameters gives, or why not. */
        CompleteDriverParametersPart: components["schemas"]["CompleteDriverParametersDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        ComputeCircuitAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["CircuitResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        ComputeCircuitDone: {
            answer: components["schemas"]["ComputeCircuitAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["CircuitRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/supply/circuit gives, or why not. */
        ComputeCircuitPart: components["schemas"]["ComputeCircuitDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        ComputeCurrentAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["SupplyCurrentResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        ComputeCurrentDone: {
            answer: components["schemas"]["ComputeCurrentAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["SupplyCurrentRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/supply/current gives, or why not. */
        ComputeCurrentPart: components["schemas"]["ComputeCurrentDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        ComputeFeederAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["FeederResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        ComputeResponseAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["EnclosureResponse"];
            sources: components["schemas"]["SourceIdList"];
        };
        ComputeResponseDone: {
            answer: components["schemas"]["ComputeResponseAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["EnclosureResponseRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/enclosures/response gives, or why not. */
        ComputeResponsePart: components["schemas"]["ComputeResponseDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        ComputeToleranceAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["EnclosureTolerance"];
            sources: components["schemas"]["SourceIdList"];
        };
        /**
         * Metal of a conductor.
         * @enum {string}
         */
        Conductor: "copper" | "aluminium" | "copper-clad-10" | "copper-clad-15" | "unknown";
        ConverterLoad: {
            averageInputA: number;
            efficiency: number;
            fullSineInputA: number;
            heavyInputA: number;
            nominalV: number;
            outputV: number;
            ratedA: number;
            ratedInputA: number;
        };
        /** A converter from the voltage of the vehicle to that of the amplifiers, as in a lorry of 24 V */
        ConverterRequest: {
            /** Output over input */
            efficiency?: number;
            /** Input that its maker allows */
            highestInputV?: number;
            /** Input below which it stops */
            lowestInputV?: number;
            /** Voltage it holds */
            outputV?: number;
            /** Most it gives for good */
            ratedA?: number;
        };
        CornerFill: {
            count: number;
            lengthMm: number;
            radiusMm: number;
        };
        /** A chamber, which is a node of the network. */
        CustomChamber: {
            /** Q of the absorption at the frequency of the chamber */
            absorptionQ?: number;
            /** Q of the leak to the outside at the frequency of the chamber */
            leakQ?: number;
            /** Frequency at which the loss Qs hold */
            lossHz?: number;
            /** Name of your own */
            name: string;
            /** Acoustic volume for all drivers together */
            netVolumeL: number;
        };
        /** Equal drivers that share both sides. */
        CustomDriverGroup: {
            /** Number of drivers */
            count?: number;
            /** Before the cones */
            front: string;
            /** Drivers in each string */
            inSeries?: number;
            /** Wired against the others */
            inverted?: boolean;
            /** Name of your own */
            name: string;
            /** Behind the cones */
            rear: string;
        };
        /** Chambers and what lies between them, given directly */
        CustomEnclosure: {
            /** Chambers */
            chambers?: components["schemas"]["CustomChamber"][];
            /**
             * How the groups are joined
             * @enum {string}
             */
            connection?: "parallel" | "series";
            /** Groups of drivers */
            driverGroups: components["schemas"]["CustomDriverGroup"][];
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "custom";
            /** Leaks between places */
            leaks?: components["schemas"]["CustomLeak"][];
            /** Passive radiators */
            passiveRadiators?: components["schemas"]["CustomPassiveRadiators"][];
            /** Ports */
            ports?: components["schemas"]["CustomPort"][];
        };
        /** A resistance between two places. */
        CustomLeak: {
            /** One end */
            from: string;
            /** Acoustic resistance */
            resistancePaSPerM3: number;
            /** Other end */
            to: string;
        };
        /** Equal passive radiators between two places. */
        CustomPassiveRadiators: {
            /** Effective area of one radiator */
            areaCm2: number;
            /** Compliance of one radiator */
            complianceMmPerN: number;
            /** Number of equal radiators */
            count?: number;
            /** One side */
            from: string;
            /** Moving mass of one radiator with air load and added weight */
            massG: number;
            /** Name of your own */
            name: string;
            /** Mechanical Q of one radiator alone in free air */
            qm?: number;
            /** Other side */
            to: string;
        };
        /** Equal ports between two places. */
        CustomPort: {
            /** Cross-section of one port */
            areaCm2: number;
            /** Number of equal ports */
            count?: number;
            /** Sum of both end corrections over the radius of one port */
            endFactor?: number;
            /** One end */
            from: string;
            /** Physical length of one port */
            lengthMm: number;
            /** Frequency at which the loss Qs hold */
            lossHz?: number;
            /** Q of the friction in the port at its tuning */
            lossQ?: number;
            /** Name of your own */
            name: string;
            /** Other end */
            to: string;
        };
        CutOut: {
            cornerRadiusMm?: number;
            diameterMm?: number;
            /** @enum {string} */
            face?: "inner";
            heightMm?: number;
            /** @enum {string} */
            kind: "circle" | "rectangle";
            label: string;
            /** @enum {string} */
            purpose: "driver" | "driver-rebate" | "passive-radiator" | "port" | "terminal" | "amplifier" | "cable" | "brace-window" | "groove" | "rebate" | "finger";
            rebateDepthMm?: number;
            roundingRadiusMm?: number;
            screwCircle?: components["schemas"]["ScrewCircle"];
            uMm: number;
            vMm: number;
            widthMm?: number;
        };
        Design: {
            amplifier: string;
            cautions: components["schemas"]["Caution"][];
            driver: string;
            driverCount: number;
            figures: components["schemas"]["DesignFigures"];
            kind: components["schemas"]["SearchedKind"];
            plan: components["schemas"]["PlanRequest"];
            points: components["schemas"]["DesignPoints"];
            rank: number;
            score: number;
            tightest?: components["schemas"]["LimitReading"];
            unbeaten: boolean;
        };
        DesignCause: {
            change?: components["schemas"]["FigureChanges"];
            lastDb?: number[];
            /** @enum {string} */
            parameter: "driver" | "drivers" | "enclosure" | "rear-volume" | "rear-port" | "rear-passive-radiators" | "rear-losses" | "front-volume" | "front-port" | "front-passive-radiators" | "front-losses" | "source" | "filters";
            refusal?: string;
        };
        /** Designs in the same air and the same car. */
        DesignComparison: {
            air?: components["schemas"]["Air"];
            cabin?: components["schemas"]["Cabin"];
            /** The first is what the others are measured against */
            designs: components["schemas"]["ComparedDesign"][];
            /** A list of frequencies, or a range with equal ratios */
            frequenciesHz?: number[] | components["schemas"]["FrequencyRange"];
        };
        DesignComparisonResult: {
            comparedHz: number[];
            designs: components["schemas"]["DesignSideBySide"][];
            differences: components["schemas"]["DesignDifference"][];
            differing: ("levels" | "most-levels" | "half-power" | "tuning" | "qtc" | "net-volume" | "voltage" | "cone-excursion" | "port-air-speed" | "group-delay" | "impedance")[];
            frequencyHz: number[];
            /** @enum {string} */
            place: "seat" | "half-space";
        };
        DesignDifference: {
            causes: components["schemas"]["DesignCause"][];
            change: components["schemas"]["FigureChanges"];
            name: string;
            togetherDb: number[];
        };
        /** The figures a design is judged by, at the voltage the gain is set to. */
        DesignFigures: {
            /** Largest air speed in the port, peak */
            airSpeedMPerS?: number;
            /** Current on average with music */
            averageA: number;
            /** Largest excursion, peak, one way */
            coneExcursionMm: number;
            /** Largest excursion over Xmax */
            excursionOfXmax: number;
            /** Half power */
            f3Hz: number;
            /** Current at full sine */
            fullSineA: number;
            /** Level at levelHz, held back where a limit of the parts would be passed there */
            levelDb: number;
            /** Load on each output */
            loadOhm: number;
            /** Box with its drivers */
            massKg: number;
            /** Air in the box */
            netVolumeL: number;
            /** Space the box takes */
            outerVolumeL: number;
            /** Continuous power of all outputs together after the gain is set */
            powerW: number;
            /** Drivers and amplifier */
            price?: number;
            /** Tuning of a vented box */
            tuningHz?: number;
        };
        /**
         * What a search is after.
         * @enum {string}
         */
        DesignGoal: "everyday" | "low" | "loud" | "tight" | "small";
        /** What a design must keep */
        DesignLimits: {
            /** Most peak air speed in the port */
            airSpeedMPerS?: number;
            /** Most current on average with music */
            averageA?: number;
            /** Most peak excursion one way over Xmax */
            excursionOfXmax?: number;
            /** Half power must lie at or below */
            f3AtMostHz?: number;
            /** Most current at full sine, other amplifiers of the run in it */
            fullSineA?: number;
            /** Least level at levelHz, half space, 1 m, re 20 µPa */
            levelAtLeastDb?: number;
            /** Most mass of the box with its drivers */
            massKg?: number;
            /** Most space of the box, outside */
            outerVolumeL?: number;
            /** Most that drivers and amplifier may cost together */
            pricePerSystem?: number;
        };
        /** A search and all its parts. */
        DesignMergeRequest: {
            /** Every part once, in any order */
            parts: components["schemas"]["SearchPart"][];
            /** The request that was split */
            request: components["schemas"]["DesignSearchRequest"];
        };
        DesignPoints: {
            box: number;
            current: number;
            level: number;
            price?: number;
            reach: number;
        };
        /** Candidates, the car, its supply and the limits */
        DesignSearchRequest: {
            air?: components["schemas"]["Air"];
            /** Amplifiers to choose from */
            amplifiers: components["schemas"]["SearchAmplifier"][];
            board: components["schemas"]["PlanBoard"];
            car: components["schemas"]["PlanCar"];
            /** How many drivers to try */
            driverCounts?: number[];
            /** Drivers to choose from */
            drivers: components["schemas"]["SearchDriver"][];
            finish?: components["schemas"]["PlanFinish"];
            /** What each box is made for */
            goal?: components["schemas"]["DesignGoal"];
            /** Kinds of box to try */
            kinds?: components["schemas"]["SearchedKind"][];
            /** Where the level is compared */
            levelHz?: number;
            limits?: components["schemas"]["DesignLimits"];
            /** At hand for every system */
            passiveRadiators?: components["schemas"]["PlanPassiveRadiators"];
            port?: components["schemas"]["SearchPort"];
            /**
             * `balance` weighs all alike
             * @enum {string}
             */
            rankBy?: "balance" | "level" | "reach" | "box" | "price" | "current";
            /** Only this part */
            shard?: components["schemas"]["AskedShard"];
            /** Most designs, and most of every other list, in the answer */
            show?: number;
            signal?: components["schemas"]["PlanSignal"];
            supply: components["schemas"]["PlanSupply"];
            weights?: components["schemas"]["DesignWeightWish"];
        };
        DesignSearchResult: {
            designs: components["schemas"]["Design"][];
            goal: components["schemas"]["DesignGoal"];
            levelHz: number;
            part?: components["schemas"]["SearchPart"];
            rankedCount: number;
            rejected: components["schemas"]["RejectedDesign"][];
            rejectedBy: components["schemas"]["RejectionCount"][];
            rejectedCount: number;
            relaxation?: components["schemas"]["SearchRelaxation"];
            unbeaten: components["schemas"]["UnbeatenSystem"][];
            unbeatenCount: number;
            weighed: number;
            weights: components["schemas"]["DesignWeights"];
        };
        DesignSideBySide: {
            curves: components["schemas"]["ComparedCurves"];
            figures: components["schemas"]["ComparedFigures"];
            name: string;
        };
        DesignWeights: {
            box: number;
            current: number;
            level: number;
            price: number;
            reach: number;
        };
        /** Weights in place of those that rankBy gives. */
        DesignWeightWish: {
            /** Weight of the box */
            box?: number;
            /** Weight of the current at full sine */
            current?: number;
            /** Weight of a decibel of level at levelHz */
            level?: number;
            /** Weight of the price */
            price?: number;
            /** Weight of the reach */
            reach?: number;
        };
        /** A digital output behind a converter with a line output. */
        DigitalSource: {
            /** The source is the vehicle's own and may equalise, delay and roll off */
            factory?: boolean;
            /**
             * Kind of source (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "digital";
            /** Line output of the converter at full scale */
            levelV?: number;
            /** Output resistance of the converter */
            outputOhm?: number;
        };
        Displaced: {
            amplifierL: number;
            baffleRingsL: number;
            bracesL: number;
            cleatsL: number;
            dividerL: number;
            driversL: number;
            liningL: number;
            otherL: number;
            portsL: number;
            terminalL: number;
            totalL: number;
        };
        /** Board between the chambers of a band-pass box, parallel to the front */
        Divider: {
            /** Clear depth of the front chamber */
            fromFrontMm?: number;
            /** Instead */
            frontNetVolumeL?: number;
            /** The front is screwed on over a gasket and comes off */
            screwedFront?: boolean;
        };
        DrawBoxAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["BoxDrawings"];
            sources: components["schemas"]["SourceIdList"];
        };
        DrivePeaks: {
            coneExcursionHz: number;
            coneExcursionMm: number;
            coneExcursionOfXmax?: number;
            currentA: number;
            currentHz: number;
            passiveRadiatorExcursionHz?: number;
            passiveRadiatorExcursionMm?: number;
            portAirSpeedHz?: number;
            portAirSpeedMPerS?: number;
        };
        /** One driver, its coils already joined */
        Driver: {
            /** Force factor of the coils as they are joined */
            blTm?: number;
            /** Compliance of the suspension */
            cmsMmPerN?: number;
            /** Free-air resonance */
            fsHz?: number;
            /** Second inductance, in series with the first */
            le2Mh?: number;
            /** Resistance across the second inductance */
            le2ParallelOhm?: number;
            /** n of a lossy coil K·(jω)^n */
            leExponent?: number;
            /** K of a lossy coil K·(jω)^n, in place of the inductances */
            leFactor?: number;
            /** Inductance of the coils as they are joined */
            leMh?: number;
            /** Resistance directly across the inductance (lossy coil) */
            leParallelOhm?: number;
            /** Moving mass with air load */
            mmsG?: number;
            /** Continuous power rating */
            powerW?: number;
            /** Electrical Q at resonance */
            qes?: number;
            /** Mechanical Q at resonance */
            qms?: number;
            /** Total Q at resonance */
            qts?: number;
            /** DC resistance of the coils as they are joined */
            reOhm: number;
            /** Mechanical resistance */
            rmsKgPerS?: number;
            /** Effective piston area */
            sdCm2: number;
            /** Air that Vas is stated for */
            vasAir?: components["schemas"]["VasAir"];
            /** Air volume of equal compliance, as the sheet prints it */
            vasL?: number;
            /** Linear excursion, one way, peak */
            xmaxMm?: number;
        };
        DriverFigures: {
            airLoadG: number;
            ebpHz: number;
            efficiencyPercent: number;
            impedancePeakOhm: number;
            level1WDb: number;
            level2V83Db: number;
            levelRated1WDb?: number;
            sweptVolumeL?: number;
        };
        DriverLeaning: {
            /** @enum {string} */
            kind: "closed" | "either" | "vented";
            why: string;
        };
        /** Sizes of one driver, for the box. */
        DriverMounting: {
            /** Hole */
            cutOutDiameterMm?: number;
            /** Air one driver takes from the box, as sheets give it for a magnet inside */
            displacementL?: number;
            /** Face of the box that carries the drivers */
            face?: components["schemas"]["ShellFace"];
            /** Outer diameter */
            flangeDiameterMm?: number;
            /** Diameter of the motor */
            magnetDiameterMm?: number;
            /** Height of the motor */
            magnetHeightMm?: number;
            /** Mass of one driver */
            massKg?: number;
            /**
             * `reversed` puts the magnet outside
             * @enum {string}
             */
            mount?: "front" | "reversed";
            /** Outer face of the baffle to the rear of the motor */
            mountingDepthMm?: number;
            /** Rebate that lets the flange in */
            rebateDepthMm?: number;
            ring?: components["schemas"]["BaffleRing"];
            /** Circle of the fixing screws */
            screwCircleDiameterMm?: number;
            /** Fixing screws */
            screwCount?: number;
            /** Hole through the pole piece */
            ventDiameterMm?: number;
            /** Diameter of the voice coil */
            voiceCoilDiameterMm?: number;
        };
        /** A driver that hangs on the panel by a circle of screws. */
        DriverOnPanel: {
            /** Centre along the length */
            fromEndMm?: number;
            /** Centre along the width */
            fromSideMm?: number;
            /** Mass */
            massKg: number;
            /** Circle of the screws */
            screwCircleDiameterMm: number;
        };
        /** A data sheet to be completed and checked. */
        DriverParametersRequest: {
            air?: components["schemas"]["Air"];
            coils?: components["schemas"]["SheetCoils"];
            driver: components["schemas"]["DriverSheet"];
        };
        DriverParametersResult: {
            checks: components["schemas"]["ParameterCheck"][];
            driver: components["schemas"]["CompletedDriver"];
            figures: components["schemas"]["DriverFigures"];
            leaning: components["schemas"]["DriverLeaning"];
            origins: components["schemas"]["ParameterOrigins"];
            slips: components["schemas"]["UnitSlip"][];
        };
        DriverRegion: {
            best: components["schemas"]["SuitedDriver"];
            corners: components["schemas"]["SuitedDriver"][];
            fsFromHz: number;
            fsToHz: number;
            goal: components["schemas"]["DesignGoal"];
            nominalMm: number;
            qtsFrom: number;
            qtsTo: number;
            text: string;
            toleranceDb: number;
            typical: components["schemas"]["TypicalDriver"];
            vasFromL: number;
            vasToL: number;
        };
        /** A wish, a space and a power, and no driver yet. */
        DriverRegionRequest: {
            air?: components["schemas"]["Air"];
            board: components["schemas"]["PlanBoard"];
            cabin?: components["schemas"]["Cabin"];
            /** Drivers, all alike, in one box */
            driverCount: number;
            finish?: components["schemas"]["PlanFinish"];
            /** What the box is wanted for */
            goal?: components["schemas"]["DesignGoal"];
            /** Size of the drivers, taken as the nearest usual one */
            nominalDiameterMm?: number;
            /** Continuous power for all drivers together */
            powerW: number;
            space: components["schemas"]["PlanSpace"];
        };
        /** Equal drivers that share the enclosure. */
        Drivers: {
            /** Number of drivers, both of each isobaric pair */
            count?: number;
            /** Drivers in each string */
            inSeries?: number;
            isobaric?: components["schemas"]["IsobaricPairs"];
        };
        /** What a data sheet says of one driver */
        DriverSheet: {
            /** Force factor */
            blTm?: number;
            /** Compliance of the suspension */
            cmsMmPerN?: number;
            /** Free-air resonance */
            fsHz?: number;
            /** Coil inductance */
            leMh?: number;
            /** Resistance across the inductance */
            leParallelOhm?: number;
            /** Printed sensitivity at 1 W, 1 m */
            level1WDb?: number;
            /** Printed sensitivity at 2.83 V, 1 m */
            level2V83Db?: number;
            /** Moving mass without air load, in place of Mms */
            mmdG?: number;
            /** Moving mass with its air load */
            mmsG?: number;
            /** Nominal diameter (12 in is 305 mm) */
            nominalDiameterMm?: number;
            /** Continuous power rating */
            powerW?: number;
            /** Electrical Q */
            qes?: number;
            /** Mechanical Q */
            qms?: number;
            /** Total Q */
            qts?: number;
            /** Rated impedance */
            ratedImpedanceOhm?: number;
            /** Direct-current resistance of the coil */
            reOhm?: number;
            /** Mechanical resistance */
            rmsKgPerS?: number;
            /** Effective area of the cone */
            sdCm2?: number;
            /** Air that Vas is stated for */
            vasAir?: components["schemas"]["VasAir"];
            /** Air volume as compliant as the suspension */
            vasL?: number;
            /** Linear excursion, one way, peak */
            xmaxMm?: number;
        };
        DriveWay: {
            againstPlanDb: number;
            highPassHz?: number;
            levelDb: number[];
            netVolumeL?: number;
            powerW: number;
            /** @enum {string} */
            way: "as-planned" | "less-power" | "higher-filter" | "smaller-box";
        };
        /** An enclosure, told apart by its kind. */
        Enclosure: components["schemas"]["InfiniteBaffle"] | components["schemas"]["ClosedBox"] | components["schemas"]["VentedBox"] | components["schemas"]["PassiveRadiatorBox"] | components["schemas"]["BandPass4"] | components["schemas"]["BandPass6Parallel"] | components["schemas"]["BandPass6Series"] | components["schemas"]["CustomEnclosure"];
        EnclosureCandidate: {
            alignment: components["schemas"]["AlignmentId"];
            alignmentF3Hz?: number;
            alpha: number;
            builtVolumeL?: number;
            fcHz?: number;
            frontTuningHz?: number;
            frontVolumeL?: number;
            goodAt: string;
            kind: components["schemas"]["EnclosureKind"];
            name: string;
            netVolumeL: number;
            passiveRadiators?: components["schemas"]["SizedPassiveRadiators"];
            preferred: boolean;
            qtc?: number;
            response: components["schemas"]["CandidateResponse"];
            secondOpinion?: components["schemas"]["SecondOpinion"];
            source: components["schemas"]["SourceId"];
            space: components["schemas"]["SpaceCost"];
            suits: boolean;
            tuningHz?: number;
            tuningRatio?: number;
            why: string[];
        };
        /**
         * Kind of an enclosure.
         * @enum {string}
         */
        EnclosureKind: "closed" | "vented" | "passive-radiator" | "band-pass-4" | "band-pass-6-parallel" | "band-pass-6-series";
        EnclosureResponse: {
            cabin?: components["schemas"]["CabinModel"];
            curves: components["schemas"]["ResponseCurves"];
            limits?: components["schemas"]["LargeSignal"];
            parts?: components["schemas"]["PartCurve"][];
            scalars: components["schemas"]["ResponseScalars"];
            timeResponse?: components["schemas"]["TimeResponse"];
        };
        /** An enclosure, its drivers and what feeds them. */
        EnclosureResponseRequest: {
            air?: components["schemas"]["Air"];
            cabin?: components["schemas"]["Cabin"];
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            enclosure: components["schemas"]["Enclosure"];
            /** Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            /** A list of frequencies, or a range with equal ratios */
            frequenciesHz?: number[] | components["schemas"]["FrequencyRange"];
            limits?: components["schemas"]["Limits"];
            source: components["schemas"]["Source"];
            timeResponse?: components["schemas"]["TimeResponseRequest"];
        };
        /** A driver looking for its box. */
        EnclosureSizingRequest: {
            air?: components["schemas"]["Air"];
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            /** Kinds to weigh */
            kinds?: components["schemas"]["EnclosureKind"][];
            lining?: components["schemas"]["SizingLining"];
            losses?: components["schemas"]["SizingLosses"];
            passiveRadiators?: components["schemas"]["SizingPassiveRadiators"];
            source?: components["schemas"]["SizingSource"];
            space?: components["schemas"]["SizingSpace"];
            wanted?: components["schemas"]["SizingWanted"];
        };
        EnclosureSizingResult: {
            candidates: components["schemas"]["EnclosureCandidate"][];
            drivers: components["schemas"]["BoxedDrivers"];
            unsuited: components["schemas"]["UnsuitedAlignment"][];
        };
        EnclosureTolerance: {
            bands: components["schemas"]["ToleranceBand"][];
            figures: components["schemas"]["ToleranceFigures"];
            frequencyHz: number[];
            nominal: components["schemas"]["NominalCurves"];
            samples: number;
            seed: number;
            sensitivities: components["schemas"]["Sensitivity"][];
            withinXmaxPercent?: number;
        };
        /** A response, and how far its parts may differ. */
        EnclosureToleranceRequest: {
            air?: components["schemas"]["Air"];
            driver: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            enclosure: components["schemas"]["Enclosure"];
            /** Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            /** A list of frequencies, or a range with equal ratios */
            frequenciesHz?: number[] | components["schemas"]["FrequencyRange"];
            /** Percentiles of the bands */
            percentiles?: number[];
            /** Systems to draw */
            samples?: number;
            /** Seed of the random numbers */
            seed?: number;
            source: components["schemas"]["Source"];
            spread?: components["schemas"]["Spread"];
        };
        EngineOff: {
            currentA: number;
            fullSineSagV: number;
            hoursToEmpty: number;
            peukertExponent: number;
            restV: number;
            sagV: number;
            usableHours: number;
        };
        ExcursionExtreme: {
            excursionMm: number;
            frequencyHz: number;
        };
        ExcursionProtection: {
            belowHz: number;
            excursionHz: number;
            excursionMm: number;
            highPass: components["schemas"]["HighPassProtection"][];
            needed: boolean;
        };
        /**
         * A face of a box.
         * @enum {string}
         */
        FaceName: "front" | "back" | "top" | "bottom" | "left" | "right" | "divider";
        FaceVibration: {
            battens: number;
            builtHz: number;
            clampedHz: number;
            displacedL?: number;
            face: string;
            frames: number;
            largestBendingMm?: number;
            lengthMm: number;
            passes: boolean;
            supportedHz: number;
            thicknessMm: number;
            wantedHz: number;
            widthMm: number;
        };
        FailedPart: {
            /** @enum {boolean} */
            done: false;
            problem: components["schemas"]["Problem"];
            request?: {
                [key: string]: unknown;
            };
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "failed";
        };
        FarFault: {
            amplifier: string;
            currentA: number;
            fuse?: string;
            limitedBy?: string;
            multiple: number;
        };
        /** An amplifier on the feeder */
        FeederAmplifier: {
            /** From the distribution block to this amplifier */
            branch?: components["schemas"]["FeederStage"];
            /** Class of the output stage */
            class?: components["schemas"]["AmplifierClass"];
            /** Current drawn, constant */
            currentA?: number;
            /** Voltage at which its converter stops */
            dropOutV?: number;
            /** Output over input at rated output, from the data sheet */
            efficiency?: number;
            /** Drawn on top of power over efficiency, where idle draw is stated apart */
            extraPowerW?: number;
            /** Input current at rated output, from the data sheet */
            inputCurrentA?: number;
            /** Power drawn, constant */
            inputPowerW?: number;
            /** Supply voltage of that input current */
            inputVoltageV?: number;
            /** Load wired to it */
            loadOhm?: number;
            /** External fuse its maker states */
            makerFuseA?: number;
            /** Name for the answer */
            name?: string;
            /** Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** Continuous RMS output of all driven channels into the wired load */
            powerW?: number;
            /** Draw at silence, switched on */
            quiescentW?: number;
            /** What the power stands for */
            ratedAs?: components["schemas"]["RatedPower"];
            /** Supply voltage of the power rating */
            ratedVoltageV?: number;
            /** Published outputs by load */
            ratings?: components["schemas"]["AmplifierLoadRating"][];
            /**
             * Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** Draw when switched off */
            standbyA?: number;
            /** Largest conductor its terminal takes */
            terminalAreaMm2?: number;
        };
        FeederAmplifierResult: {
            branch?: components["schemas"]["StageResult"];
            currentA?: number;
            dropOutV: number;
            dropPercent?: number;
            dropV?: number;
            feasible: boolean;
            firstGuessA: number;
            inputPowerW?: number;
            name?: string;
            runs: boolean;
            troughVoltageV?: number;
            voltageV?: number;
        };
        /** The cable of a stretch. */
        FeederCable: {
            /** Hottest surroundings along the run */
            ambientC?: number;
            /** Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            /** Size with its series */
            designation: string;
            /** Series of the size */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** Temperature class printed on the insulation */
            insulationC?: number;
            /** Where a metric copper size takes its resistance from */
            metricResistance?: components["schemas"]["MetricResistance"];
            /** Conductor length of the positive run */
            positiveLengthM: number;
            /** Resistivity at 20 °C in place of the metal’s */
            resistivityOhmM?: number;
            /** The way back of this stretch */
            return?: components["schemas"]["ReturnPath"];
            /** Equal runs side by side, each with its own fuse */
            runs?: number;
            /** Spaces the run passes */
            spaces?: components["schemas"]["RunSpace"][];
            /** Resistance of the stranded over the solid conductor */
            strandingFactor?: number;
            /** Temperature coefficient at 20 °C in place of the metal’s */
            temperatureCoefficientPerK?: number;
        };
        /** The fuse of a stretch, of each run. */
        FeederFuse: {
            /** Rating */
            ratingA: number;
            /** Its resistance */
            resistanceOhm?: number;
            /** Family */
            type?: components["schemas"]["FuseType"];
        };
        FeederProtection: {
            branches: components["schemas"]["BranchSelectivity"][];
            cables: components["schemas"]["GuardedCable"][];
            mainRatingA?: number;
        };
        /** Source, trunk, distribution block, branches and amplifiers. */
        FeederRequest: {
            /** Amplifiers behind the block */
            amplifiers: components["schemas"]["FeederAmplifier"][];
            /** Holds every conductor at this temperature */
            conductorTemperatureC?: number;
            groundNoise?: components["schemas"]["GroundNoiseRequest"];
            /**
             * Load
             * @enum {string}
             */
            level?: "full-sine" | "heavy" | "average";
            source: components["schemas"]["FeederSource"];
            /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58) */
            systemVoltageV: number;
            /** From the source to the distribution block, or to the only amplifier */
            trunk?: components["schemas"]["FeederStage"];
        };
        FeederResult: {
            amplifiers: components["schemas"]["FeederAmplifierResult"][];
            blockVoltageV?: number;
            collapseMargin?: number;
            feasible: boolean;
            groundNoise?: components["schemas"]["GroundNoise"];
            lossW?: number;
            maximumPowerW?: number;
            /** @enum {string} */
            mode: "regulated" | "battery-assists" | "boundary";
            nodeVoltageV?: number;
            protection: components["schemas"]["FeederProtection"];
            sourceVoltageV: number;
            totalCurrentA?: number;
            trunk?: components["schemas"]["StageResult"];
        };
        /** What feeds the trunk. */
        FeederSource: {
            /** What the vehicle takes of it */
            baseLoadA?: number;
            battery?: components["schemas"]["BatterySource"];
            /** Current the alternator or converter can give */
            currentLimitA?: number;
            /** Between that voltage and the trunk */
            resistanceOhm?: number;
            /** Regulated voltage, or open-circuit voltage of a battery */
            voltageV: number;
        };
        /** One stretch of the loop, out and back */
        FeederStage: {
            cable?: components["schemas"]["FeederCable"];
            fuse?: components["schemas"]["FeederFuse"];
            /** One of them */
            jointOhm?: number;
            /** Lugs, rings and block contacts */
            joints?: number;
            /** Anything else in this stretch, or the whole of it */
            resistanceOhm?: number;
            /** Without a fuse on purpose */
            unfused?: boolean;
        };
        FigureChanges: {
            coneExcursionMm: number;
            f3Hz?: number;
            groupDelayMs: number;
            levelsDb: number[];
            portAirSpeedMPerS?: number;
        };
        /** A filter or equaliser before the amplifier. */
        Filter: components["schemas"]["HighPassFilter"] | components["schemas"]["LowPassFilter"] | components["schemas"]["LowShelfFilter"] | components["schemas"]["HighShelfFilter"] | components["schemas"]["PeakingFilter"];
        /** A corner of the band. */
        FilterCorner: {
            /** Corner frequency */
            cornerHz: number;
            /** Order, 6 dB an octave each */
            order?: number;
        };
        FilterCornerSet: {
            cornerHz: number;
            order: number;
            why: string;
        };
        /**
         * Family of a filter.
         * @enum {string}
         */
        FilterFamily: "butterworth" | "linkwitz-riley" | "bessel" | "chosen-q";
        /** A corner of a footprint seen from above. */
        FootprintCorner: {
            /** To the right */
            xMm: number;
            /** To the rear */
            yMm: number;
        };
        /** In closed form, before a box is laid out */
        ForeseenFigures: {
            /** Largest air speed in the port, peak */
            airSpeedMPerS?: number;
            /** Current on average with music */
            averageA: number;
            /** Largest excursion over Xmax */
            excursionOfXmax?: number;
            /** Half power */
            f3Hz: number;
            /** Current at full sine */
            fullSineA: number;
            /** Level at levelHz, held back where a limit of the parts would be passed there */
            levelDb: number;
            /** Load on each output */
            loadOhm: number;
            /** Air in the box */
            netVolumeL: number;
            /** Space the box takes */
            outerVolumeL: number;
            /** Continuous power of all outputs together after the gain is set */
            powerW: number;
            /** Drivers and amplifier */
            price?: number;
            /** Tuning of a vented box */
            tuningHz?: number;
        };
        FormulaCheck: {
            from: string;
            given: components["schemas"]["FormulaGiven"][];
            gives: string;
        };
        FormulaGiven: {
            symbol: string;
            value: number;
        };
        FormulaRow: {
            checks: components["schemas"]["FormulaCheck"][];
            gives: string;
            id: string;
            source: components["schemas"]["SourceId"];
            symbols: components["schemas"]["FormulaSymbol"][];
            text: string;
            unit: string;
            validity: string;
        };
        FormulasTable: {
            description: string;
            rows: components["schemas"]["FormulaRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        FormulaSymbol: {
            from: number;
            means: string;
            symbol: string;
            to: number;
            unit: string;
        };
        FreedPart: {
            copy?: number;
            /** @enum {string} */
            is: "part" | "panel" | "offcut";
            lengthMm: number;
            panel?: string;
            part?: number;
            widthMm: number;
        };
        /** Frequencies with equal ratios. */
        FrequencyRange: {
            /** First frequency */
            fromHz: number;
            /** Number of frequencies */
            points: number;
            /** Last frequency */
            toHz: number;
        };
        FrequencySpread: {
            meanHz: number;
            nominalHz: number;
            percentilesHz: number[];
            standardDeviationHz: number;
        };
        FuseBounds: {
            highestA: number;
            loadA: number;
            lowestA: number;
            thermalA: number;
        };
        FusedCable: {
            ampacityA: number;
            designation: string;
            highestFuseA: number;
        };
        FuseFamilyRow: {
            breakingA: number;
            form: string;
            ratingsA: number[];
            source: components["schemas"]["SourceId"];
            standard: string;
            status: string;
            type: components["schemas"]["FuseType"];
            voltagesV: number[];
        };
        FusePlacement: {
            bothEnds: boolean;
            idealMm: number;
            sheathedMm: number;
            text: string;
            usualMm: number;
        };
        /**
         * How near to its ampacity a cable may be fused.
         * @enum {string}
         */
        FusePolicy: "strict" | "cfr-150";
        /** A load behind a cable that wants a fuse. */
        FuseRequest: {
            /** Further cables before the next fuse */
            alsoProtects?: components["schemas"]["ProtectedCable"][];
            /** Branch fuses behind this one, for selectivity */
            branchFusesA?: number[];
            cable: components["schemas"]["ProtectedCable"];
            /** Test tones or sustained notes */
            continuousTone?: boolean;
            /** Full-sine current of the load */
            currentA: number;
            /** Planned length of conductor between source and fuse */
            distanceMm?: number;
            /** Surroundings of the fuse */
            fuseAmbientC?: number;
            /** Current of dense bass music (1/3 of rated output), for the heating of the fuse */
            heavyCurrentA?: number;
            /** The cable links two batteries */
            linksTwoBatteries?: boolean;
            /** Continuous load over fuse rating */
            loadRatio?: number;
            /** External fuse the amplifier’s maker states */
            makerFuseA?: number;
            /** Fuses on the amplifier itself */
            onboardFusesA?: number[];
            /** Overcurrent to give the operating times of */
            overcurrentA?: number;
            /** `strict` */
            policy?: components["schemas"]["FusePolicy"];
            /** That piece lies in a conduit or sheath all the way */
            sheathed?: boolean;
            source?: components["schemas"]["FuseSource"];
            /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58) */
            systemVoltageV: number;
            /** Fuse families allowed */
            types?: components["schemas"]["FuseType"][];
        };
        FuseResult: {
            bounds: components["schemas"]["FuseBounds"];
            cables: components["schemas"]["FusedCable"][];
            fuse: components["schemas"]["ChosenFuse"];
            prospectiveA: number;
            selectivity?: components["schemas"]["FuseSelectivity"][];
            timeCurrent?: components["schemas"]["FuseTimeBand"];
        };
        FuseSelectivity: {
            branchRatingA: number;
            ratio: number;
            selective: boolean;
        };
        FuseSeries: {
            before: string;
            behind: string;
            ratio: number;
        };
        /** The battery behind the fuse and the way to it. */
        FuseSource: {
            /** Capacity of the bank at 20 h */
            capacityAh?: number;
            /** Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** Cold cranking current, from which both ends of the resistance follow */
            coldCrankingA?: number;
            /** Everything between battery and fuse, out and back */
            leadOhm?: number;
            /** Open-circuit voltage of the battery */
            openCircuitV?: number;
            /** Internal resistance of the battery */
            resistanceOhm?: number;
        };
        FusesTable: {
            description: string;
            rows: components["schemas"]["FuseFamilyRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        FuseTimeBand: {
            maximumS?: number;
            minimumS?: number;
            percent: number;
        };
        /**
         * Type of a fuse
         * @enum {string}
         */
        FuseType: "F" | "C" | "E" | "SF30" | "SF51" | "single-bolt" | "marine-strip" | "class-t" | "knife-blade";
        GainSetting: {
            boostDb: number;
            channelLoadOhm?: number;
            channelMeterVoltageV?: number;
            channelVoltageV?: number;
            currentA: number;
            filterLossDb: number;
            /** @enum {string} */
            limitedBy?: "amplifier" | "drivers" | "asked";
            loadOhm: number;
            meterVoltageV: number;
            meterVoltageWithFiltersV: number;
            powerW: number;
            quietRecordingDb: number;
            targetVoltageV: number;
            toneHz: number;
            toneLevelDb: number;
            voltageGainDb?: number;
        };
        /**
         * Series of cable sizes.
         * @enum {string}
         */
        GaugeSystem: "awg" | "sae" | "mm2";
        /** Volumes the caller knows */
        GivenDisplacement: {
            /** Amplifier, instead of what would be computed */
            amplifierL?: number;
            /** All braces, instead of what would be computed */
            bracesL?: number;
            /** All drivers, instead of what would be computed */
            driversL?: number;
            /** Lining, instead of what would be computed */
            liningL?: number;
            /** Anything else, instead of what would be computed */
            otherL?: number;
            /** All ports with their walls, instead of what would be computed */
            portsL?: number;
            /** Terminal cup, instead of what would be computed */
            terminalL?: number;
        };
        GroundAdvice: {
            acceptanceMohm?: number;
            designation?: string;
            expectedMohm?: number;
            fullSine?: components["schemas"]["GroundReading"];
            heavy?: components["schemas"]["GroundReading"];
            /** @enum {string} */
            kind: "cable" | "chassis";
            leadAtMostM: number;
            text: string;
        };
        GroundNoise: {
            levelDb: number;
            noiseMv: number;
        };
        /** A resistance that supply and signal ground share. */
        GroundNoiseRequest: {
            /** Ripple current */
            rippleA?: number;
            /** Shared resistance */
            sharedOhm: number;
            /** Signal at full level */
            signalV: number;
        };
        GroundReading: {
            acceptanceMv: number;
            currentA: number;
            expectedMv: number;
        };
        GuardedCable: {
            ampacityA?: number;
            designation: string;
            fuseRatingA?: number;
            guarded: boolean;
            stretch: string;
        };
        /** Passes what lies above its corner. */
        HighPassFilter: {
            /** Corner frequency */
            cornerHz: number;
            /** `butterworth` and `bessel` */
            family: components["schemas"]["FilterFamily"];
            /**
             * Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "high-pass";
            /** Order */
            order: number;
            /** Q of the pole pair, only with the family `chosen-q` */
            q?: number;
        };
        HighPassProtection: {
            cornerHz: number;
            gainAtTuningDb: number;
            order: number;
        };
        /** Raises or lowers what lies above its corner. */
        HighShelfFilter: {
            /** Frequency at which half of the gain in dB is reached */
            cornerHz: number;
            /** Gain of the shelf */
            gainDb: number;
            /**
             * Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "high-shelf";
            /** Steepness */
            q?: number;
        };
        ImpedanceExtreme: {
            frequencyHz: number;
            ohm: number;
        };
        /**
         * How inches are written.
         * @enum {string}
         */
        InchStyle: "decimal" | "sixteenths";
        /** The back wave goes to another space and is not heard. */
        InfiniteBaffle: {
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "infinite-baffle";
        };
        /** An amplifier in the air of the box. */
        InsideAmplifier: {
            /** Behind the inner face of its panel */
            depthMm: number;
            /** Height */
            heightMm: number;
            /** Mass */
            massKg?: number;
            /** Width */
            widthMm: number;
        };
        /**
         * Insulation of a cable.
         * @enum {string}
         */
        InsulationMaterial: "pvc" | "cross-linked-pvc" | "xlpe" | "epr" | "rubber" | "silicone";
        /** Drivers in pairs around a small chamber */
        IsobaricPairs: {
            /**
             * How the outer and the inner drivers are joined
             * @enum {string}
             */
            connection?: "parallel" | "series";
            /** Volume between the two cones of all pairs together */
            couplingVolumeL: number;
        };
        /** How the panels meet. */
        Joints: {
            /**
             * Of a rectangular box any
             * @enum {string}
             */
            corners?: "butt" | "mitre" | "rebate" | "finger";
            /**
             * How divider and frames meet the walls
             * @enum {string}
             */
            inner?: "butt" | "groove";
            /**
             * Sides (of a prism
             * @enum {string}
             */
            sides?: "between" | "over";
        };
        /** A block on the floor of the boot, whose floor is as wide and deep as the limits. */
        KeepOut: {
            /** Depth */
            depthMm: number;
            /** Height */
            heightMm: number;
            /** Width */
            widthMm: number;
            /** Left edge, from the left wall */
            xMm: number;
            /** Near edge, from the seat or sill the box is pushed against */
            yMm: number;
            /** Underside, above the floor */
            zMm: number;
        };
        LaidPiece: {
            copy: number;
            lengthMm: number;
            panel: string;
            turned: boolean;
            widthMm: number;
            xMm: number;
            yMm: number;
        };
        LargeSignal: {
            atDrive: components["schemas"]["DrivePeaks"];
            heating?: components["schemas"]["CoilHeating"];
            programme: components["schemas"]["ProgrammeLimit"];
            protection?: components["schemas"]["ExcursionProtection"];
            segments: components["schemas"]["LimitSegment"][];
        };
        LargestDriver: {
            flangeDiameterMm: number;
            mountingDepthMm: number;
            nominalMm: number;
        };
        LayOutBoxAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["BoxLayoutResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        LayOutBoxDone: {
            answer: components["schemas"]["LayOutBoxAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["BoxRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/boxes/panels gives, or why not. */
        LayOutBoxPart: components["schemas"]["LayOutBoxDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /**
         * What ends the level.
         * @enum {string}
         */
        LimitName: "cone-excursion" | "passive-radiator-excursion" | "coil-heat" | "rated-voltage" | "amplifier-voltage" | "amplifier-current" | "port-air-speed";
        /** A figure beside its limit. */
        LimitReading: {
            /** The limit, in `unit` */
            bound: number;
            /** What is left up to the limit, in `unit` */
            left: number;
            /**
             * Which limit
             * @enum {string}
             */
            limit: "price" | "full-sine-current" | "average-current" | "box-size" | "mass" | "reach" | "level" | "excursion" | "air-speed";
            /** Unit of both */
            unit: string;
            /** The figure, in `unit` */
            value: number;
        };
        /** What the system must not exceed, beside `xmaxMm` and `powerW` of the driver */
        Limits: {
            /** Air speed in any port, peak */
            airSpeedMPerS?: number;
            /** What the amplifier gives at most, RMS */
            amplifierCurrentA?: number;
            /** Load at which that power is meant */
            amplifierLoadOhm?: number;
            /** In place of its voltage */
            amplifierPowerW?: number;
            /** What the amplifier gives at most, RMS */
            amplifierVoltageV?: number;
            /** Mean power over that of a full sine */
            dutyFactor?: number;
            heating?: components["schemas"]["CoilHeatingRequest"];
            /** Travel of a passive radiator, one way, peak */
            passiveRadiatorXmaxMm?: number;
            /** K of the jets at both ends of a port together */
            portLossFactor?: number;
            /** Lowest frequency of what is played */
            programmeFromHz?: number;
            /** Highest frequency of what is played */
            programmeToHz?: number;
            /** Rated impedance of the drivers as they are joined */
            ratedOhm?: number;
            /**
             * How `powerW` of the driver is read
             * @enum {string}
             */
            thermalReading?: "lower" | "coil-heat" | "rated-voltage";
        };
        LimitSegment: {
            fromHz: number;
            limit: components["schemas"]["LimitName"];
            toHz: number;
        };
        /** A line output. */
        LineLevelSource: {
            /** Whether plus and minus both carry signal */
            differential?: boolean;
            /** The source is the vehicle's own and may equalise, delay and roll off */
            factory?: boolean;
            /**
             * Kind of source (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "line-level";
            /** Highest undistorted RMS output */
            levelV: number;
            /** Output resistance */
            outputOhm?: number;
        };
        /** Absorbent pads on the inner faces. */
        Lining: {
            /** Covered area */
            areaM2?: number;
            /** Density of the pad */
            densityKgPerM3: number;
            /**
             * What it is made of
             * @enum {string}
             */
            fibre: "polyester" | "wool" | "glass" | "dense";
            /** Thickness of the pad */
            thicknessMm: number;
        };
        /** Passes what lies below its corner. */
        LowPassFilter: {
            /** Corner frequency */
            cornerHz: number;
            /** `butterworth` and `bessel` */
            family: components["schemas"]["FilterFamily"];
            /**
             * Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "low-pass";
            /** Order */
            order: number;
            /** Q of the pole pair, only with the family `chosen-q` */
            q?: number;
        };
        /** Raises or lowers what lies below its corner. */
        LowShelfFilter: {
            /** Frequency at which half of the gain in dB is reached */
            cornerHz: number;
            /** Gain of the shelf */
            gainDb: number;
            /**
             * Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "low-shelf";
            /** Steepness */
            q?: number;
        };
        MatchAmplifierAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["AmplifierMatchResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        MatchAmplifierDone: {
            answer: components["schemas"]["MatchAmplifierAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["AmplifierMatchRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/amplifiers/matching gives, or why not. */
        MatchAmplifierPart: components["schemas"]["MatchAmplifierDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** One of the drivers, all alike. */
        MatchDriver: {
            /** Rated impedance of one coil */
            coilOhm: number;
            /** Voice coils */
            coils: number;
            /** Continuous RMS power it takes, all its coils together */
            powerW: number;
            /** What kind of figure powerW is */
            ratingKind?: components["schemas"]["RatingKind"];
        };
        MatchGain: {
            channelLoadOhm?: number;
            channelMeterVoltageV?: number;
            channelVoltageV?: number;
            currentA: number;
            /** @enum {string} */
            limitedBy?: "amplifier" | "drivers" | "asked";
            loadOhm: number;
            meterVoltageV: number;
            powerW: number;
            quietRecordingDb: number;
            targetVoltageV: number;
            toneLevelDb: number;
        };
        MatchOption: {
            advice: string;
            amplifier: string;
            amplifiersNeeded: number;
            bridged: boolean;
            claimedPowerW?: number;
            coilPowerW?: number;
            driverPowerW?: number;
            driversPerOutput: number;
            footprintCm2?: number;
            join: string;
            loadOhm: number;
            lowestOhm: number;
            outputPowerW?: number;
            outputs: number;
            /** @enum {string} */
            powerFrom?: "published" | "two-channels" | "voltage-bound";
            powerRatio?: number;
            price?: number;
            ratedOhm?: number;
            ratedPowerW?: number;
            totalPowerW?: number;
            /** @enum {string} */
            verdict: "good" | "under-powered" | "over-powered" | "power-unknown" | "below-minimum";
        };
        MatchWiring: {
            joints: components["schemas"]["CoilJoint"][];
            steps: string[];
        };
        MaterialRow: {
            grained: boolean;
            id: components["schemas"]["BoardId"];
            note: string;
            sheets: components["schemas"]["BoardSheet"][];
            source: components["schemas"]["SourceId"];
            thicknesses: components["schemas"]["BoardThickness"][];
            title: string;
        };
        MaterialsTable: {
            description: string;
            rows: components["schemas"]["MaterialRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        /** What a microphone at the seat found, against half space at 1 m. */
        MeasuredTransfer: {
            /** Frequencies, rising */
            frequencyHz: number[];
            /** Level at the seat over the level in half space at 1 m, one for each frequency */
            gainDb: number[];
        };
        MendedParameter: {
            blTm?: number;
            cmsMmPerN?: number;
            fsHz?: number;
            leMh?: number;
            mmsG?: number;
            qes?: number;
            qms?: number;
            qts?: number;
            reOhm?: number;
            rmsKgPerS?: number;
            sdCm2?: number;
            vasL?: number;
            xmaxMm?: number;
        };
        MergeDesignsAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["DesignSearchResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        /**
         * Where the resistance of a metric cable comes from.
         * @enum {string}
         */
        MetricResistance: "iec-60228-class-5" | "iso-6722-1" | "nominal-area";
        ModelBody: {
            highest: components["schemas"]["BoxPoint"];
            /** @enum {string} */
            kind: "board" | "driver" | "tube" | "cup" | "amplifier";
            lowest: components["schemas"]["BoxPoint"];
            name: string;
            volumeL: number;
        };
        ModelBoxAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["BoxModel"];
            sources: components["schemas"]["SourceIdList"];
        };
        MovedFigures: {
            figures: string[];
            operationId: string;
            text: string;
        };
        /** A system that comes near to the limits, and what would let it in. */
        NearSystem: {
            /** Name of the amplifier */
            amplifier: string;
            /** Beyond the limit it breaks most, as a share of it */
            beyond: number;
            /** Name of the driver */
            driver: string;
            /** Drivers */
            driverCount: number;
            /** By which it was taken in turn */
            foreseen: components["schemas"]["ForeseenFigures"];
            /** Absent where it cannot be built */
            found?: components["schemas"]["SearchRelaxation"];
            /** Kind of box */
            kind: components["schemas"]["SearchedKind"];
        };
        NestPanelsAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["SheetPlanResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        NestPanelsDone: {
            answer: components["schemas"]["NestPanelsAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["SheetPlanRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/boxes/sheets gives, or why not. */
        NestPanelsPart: components["schemas"]["NestPanelsDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        NominalCurves: {
            coneExcursionMm: number[];
            impedanceOhm: number[];
            levelDb: number[];
        };
        /** A chamber with either ports or passive radiators. */
        OpenChamber: {
            /** Q of the absorption at the frequency of the chamber */
            absorptionQ?: number;
            /** Q of the leak to the outside at the frequency of the chamber */
            leakQ?: number;
            /** Acoustic volume for all drivers together */
            netVolumeL: number;
            passiveRadiators?: components["schemas"]["PassiveRadiators"];
            port?: components["schemas"]["Port"];
        };
        Panel: {
            copies?: components["schemas"]["PanelCopy"][];
            cutOuts: components["schemas"]["CutOut"][];
            edges: components["schemas"]["PanelEdge"][];
            grain: components["schemas"]["PanelGrain"];
            /** @enum {string} */
            lengthAlong: "u" | "v";
            lengthMm: number;
            massKg: number;
            material: components["schemas"]["BoardId"];
            name: string;
            outline: components["schemas"]["PanelPoint"][];
            place?: components["schemas"]["PanelPlace"];
            quantity: number;
            /** @enum {string} */
            role: "top" | "bottom" | "front" | "back" | "side" | "wall" | "divider" | "port-wall" | "brace" | "baffle-ring";
            thicknessMm: number;
            widthMm: number;
        };
        PanelBending: {
            clamped: components["schemas"]["PanelBendingFigures"];
            supported: components["schemas"]["PanelBendingFigures"];
        };
        PanelBendingFigures: {
            displacedL: number;
            largestMm: number;
            meanMm: number;
        };
        PanelCopy: {
            marks: components["schemas"]["PanelMark"][];
            name: string;
            place: components["schemas"]["PanelPlace"];
        };
        PanelEdge: {
            edge: number;
            /** @enum {string} */
            longFace: "outer" | "inner" | "equal";
            roundingRadiusMm?: number;
            tiltDeg: number;
        };
        PanelFrequencies: {
            clampedHz: number;
            supportedHz: number;
        };
        /**
         * Which way the grain of a panel runs.
         * @enum {string}
         */
        PanelGrain: "length" | "width" | "any";
        PanelMark: {
            /** @enum {string} */
            face: "outer" | "inner";
            from: components["schemas"]["PanelPoint"];
            part: string;
            screws: components["schemas"]["PanelPoint"][];
            to: components["schemas"]["PanelPoint"];
            widthMm: number;
        };
        PanelPlace: {
            origin: components["schemas"]["BoxPoint"];
            uAxis: components["schemas"]["BoxDirection"];
            vAxis: components["schemas"]["BoxDirection"];
        };
        PanelPoint: {
            uMm: number;
            vMm: number;
        };
        PanelRigidity: {
            acrossNm: number;
            alongNm: number;
            twistNm: number;
        };
        /** Equal parts that braces divide a panel into. */
        PanelSpans: {
            /** Parts of the length */
            ofLength?: number;
            /** Parts of the width */
            ofWidth?: number;
        };
        /** One flat panel held along its four edges. */
        PanelVibrationRequest: {
            board?: components["schemas"]["Board"];
            driver?: components["schemas"]["DriverOnPanel"];
            /** Boards glued face to face */
            layers?: number;
            /** Free between its edges, along the face grain */
            lengthMm: number;
            /** Even pressure inside, peak */
            pressurePa?: number;
            spans?: components["schemas"]["PanelSpans"];
            /** One board */
            thicknessMm: number;
            /** Top of the band the box plays */
            upperHz?: number;
            /** Free between its edges, across the face grain */
            widthMm: number;
        };
        PanelVibrationResult: {
            bending?: components["schemas"]["PanelBending"];
            braced?: components["schemas"]["PanelFrequencies"];
            halved: components["schemas"]["PanelFrequencies"];
            massPerAreaKgPerM2: number;
            passes: boolean;
            plain: components["schemas"]["PanelFrequencies"];
            rigidity: components["schemas"]["PanelRigidity"];
            spansToPass: number;
            wantedHz: number;
            withDriverHz?: number;
        };
        /**
         * Units on paper.
         * @enum {string}
         */
        PaperUnits: "metric" | "imperial";
        ParallelRuns: {
            ampacityA: number;
            currentA: number;
            designation: string;
            dropV: number;
            fuseRatingA: number;
            runs: number;
        };
        ParameterCheck: {
            detail: string;
            /** @enum {string} */
            identity: "total-q" | "compliance-volume" | "resonance" | "electrical-q" | "mechanical-q";
            ratio: number;
            relation: string;
            /** @enum {string} */
            verdict: "agrees" | "note" | "care" | "stop";
        };
        ParameterOrigin: {
            /** @enum {string} */
            origin: "given" | "derived" | "assumed";
            rule?: string;
        };
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
        /** A caution of a design of the part. */
        PartCaution: {
            /** Path in the request */
            at?: string;
            /** Code of the caution */
            code: string;
            /** The figures that triggered it */
            figures?: components["schemas"]["PartFigure"][];
            /** `note` */
            level: components["schemas"]["CautionLevel"];
            /** The sentence with its values, as JSON */
            sentence: string;
        };
        PartCurrent: {
            currentA: number;
            id: string;
            voltageV: number;
        };
        PartCurve: {
            airSpeedMPerS?: number[];
            excursionMm?: number[];
            name: string;
            /** @enum {string} */
            part: "chamber" | "port" | "passive-radiator" | "drivers";
            pressurePa?: number[];
        };
        /** A figure of a caution. */
        PartFigure: {
            /** Name, which ends in the unit */
            name: string;
            /** The figure */
            value: number;
        };
        /** One chamber behind the cone with passive radiators. */
        PassiveRadiatorBox: {
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "passive-radiator";
            rear: components["schemas"]["RadiatorChamber"];
        };
        /** Sizes of one passive radiator, for the box. */
        PassiveRadiatorMounting: {
            /** Hole */
            cutOutDiameterMm: number;
            /** Air one driver takes from the box, as sheets give it for a magnet inside */
            displacementL?: number;
            /** Outer diameter */
            flangeDiameterMm: number;
            /** Mass of one driver */
            massKg?: number;
            /** Outer face of its board to its rear, at rest */
            mountingDepthMm: number;
            /** Rebate that lets the flange in */
            rebateDepthMm?: number;
            /** Circle of the fixing screws */
            screwCircleDiameterMm?: number;
            /** Fixing screws */
            screwCount?: number;
        };
        /** Equal passive radiators of one chamber. */
        PassiveRadiators: {
            /** Effective area of one radiator */
            areaCm2: number;
            /** Compliance of one radiator */
            complianceMmPerN: number;
            /** Number of equal radiators */
            count?: number;
            /** Moving mass of one radiator with air load and added weight */
            massG: number;
            /** Mechanical Q of one radiator alone in free air */
            qm?: number;
        };
        /** What a data sheet says of one passive radiator as it is delivered */
        PassiveRadiatorSheet: {
            /** Effective area */
            areaCm2: number;
            /** Compliance */
            complianceMmPerN?: number;
            /** Free-air resonance, nothing added */
            fsHz?: number;
            /** Moving mass with its air load, nothing added */
            massG: number;
            /** Most that its maker allows to be added to one */
            mostAddedG?: number;
            /** Mechanical Q in free air, nothing added */
            qm?: number;
            /** Air volume as compliant as the suspension */
            vasL?: number;
            /** Travel, one way, peak */
            xmaxMm: number;
        };
        /** Raises or lowers a band around its centre. */
        PeakingFilter: {
            /** Centre frequency */
            centreHz: number;
            /** Gain at the centre */
            gainDb: number;
            /**
             * Kind of filter (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "peaking";
            /** Q */
            q: number;
        };
        /** A centre on the outer face of a panel, in its own frame. */
        PlaceOnPanel: {
            /** To the right of the lower left corner */
            uMm: number;
            /** Above the lower left corner */
            vMm: number;
        };
        PlanAlternative: {
            figures: components["schemas"]["SystemFigures"];
            gains: string[];
            givesUp: string[];
            goal: components["schemas"]["DesignGoal"];
            patch: components["schemas"]["BoxPatch"];
        };
        /** The amplifier for the bass, as its data sheet says. */
        PlanAmplifier: {
            /** Channels */
            channels?: number;
            /** Class of the output stage */
            class?: components["schemas"]["AmplifierClass"];
            /** Read where the amplifier itself is silent */
            draw?: components["schemas"]["AmplifierDraw"];
            /** Output over input at rated output, from the data sheet */
            efficiency?: number;
            /** Area it takes where it is mounted */
            footprintCm2?: number;
            /** Input current at rated output, from the data sheet */
            inputCurrentA?: number;
            /** Supply voltage of that input current */
            inputVoltageV?: number;
            /** Lowest load of a bridged pair */
            minimumBridgedOhm?: number;
            /** Lowest load of one channel */
            minimumOhm: number;
            /** Name by which the answer speaks of it */
            name?: string;
            /** Fuses on the amplifier */
            onboardFusesA?: number[];
            /** Price, in any one currency */
            price?: number;
            /** Idle draw */
            quiescentW?: number;
            /** Supply at which the powers are rated, for what the fuses pass */
            ratedVoltageV?: number;
            /** What kind of figure each rating is */
            ratingKind?: components["schemas"]["RatingKind"];
            /** Published powers, one a load */
            ratings: components["schemas"]["AmplifierRating"][];
            /**
             * Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** Draw when switched off */
            standbyA?: number;
        };
        PlanAsked: {
            damping?: components["schemas"]["PlanAskedDamping"];
            space: components["schemas"]["PlanAskedSpace"];
            tuning?: components["schemas"]["PlanAskedTuning"];
            volume: components["schemas"]["PlanAskedVolume"];
        };
        PlanAskedDamping: {
            askedQtc?: number;
            builtQtc: number;
            kept: boolean;
        };
        PlanAskedSpace: {
            boxDepthMm: number;
            boxHeightMm: number;
            boxWidthMm: number;
            coveringMm: number;
            depthMm?: number;
            heightMm?: number;
            widthMm?: number;
        };
        PlanAskedTuning: {
            askedHz?: number;
            builtHz: number;
            kept: boolean;
        };
        PlanAskedVolume: {
            askedL?: number;
            builtL: number;
            kept: boolean;
        };
        PlanBand: {
            finding: string;
            fromHz: number;
            loudestDb: number;
            loudestHz: number;
            /** @enum {string} */
            place: "seat" | "half-space";
            toHz: number;
            uncertaintyDb?: number;
        };
        /** What the box is made of. */
        PlanBoard: {
            /** Modulus in bending across the face grain */
            acrossModulusGpa?: number;
            bracing?: components["schemas"]["PlanBracing"];
            /** Density */
            densityKgPerM3?: number;
            /** Modulus in bending, along the face grain */
            elasticModulusGpa?: number;
            /** Boards of the front */
            frontLayers?: number;
            /**
             * Butt
             * @enum {string}
             */
            joints?: "butt" | "groove" | "rebate" | "finger";
            /** Board */
            material?: components["schemas"]["BoardId"];
            /** Poisson ratio, strain along to stress across */
            poisson?: number;
            /** Front set back behind its edges, as for a grille */
            recessMm?: number;
            /** Shear modulus in the plane of the board */
            shearModulusGpa?: number;
            sheet?: components["schemas"]["PlanSheetSize"];
            terminal?: components["schemas"]["TerminalCup"];
            /** Thickness as measured */
            thicknessMm: number;
        };
        /** Asks for braces */
        PlanBracing: {
            /** Top of the band the box plays */
            upperHz?: number;
        };
        PlanBranch: {
            amplifier: string;
            designation: string;
            endFuse?: components["schemas"]["ChosenFuse"];
            fuse?: components["schemas"]["ChosenFuse"];
            positiveLengthM: number;
            /** @enum {string} */
            returnBy: "body" | "cable";
            returnLengthM: number;
            runs: number;
        };
        PlanCapacitor: {
            at: string;
            capacitanceF: number;
            designation: string;
            lengthM: number;
        };
        /** The vehicle around the box. */
        PlanCar: {
            cabin?: components["schemas"]["Cabin"];
            /** What drives the vehicle */
            drive?: components["schemas"]["VehicleDrive"];
            /** Mass of the vehicle */
            massKg?: number;
            restraint?: components["schemas"]["PlanRestraint"];
            space: components["schemas"]["PlanSpace"];
            /** Loudspeaker cable from amplifier to box */
            speakerCableLengthM?: number;
        };
        PlanCarPatch: {
            space: components["schemas"]["PlanSpacePatch"];
        };
        PlanCharger: {
            inputA: number;
            lead: components["schemas"]["PlanLead"];
            ratedA: number;
        };
        PlanChoice: {
            alternatives: components["schemas"]["PlanAlternative"][];
            figures: components["schemas"]["SystemFigures"];
            goal: components["schemas"]["DesignGoal"];
        };
        PlanCircuit: {
            amplifiers: string[];
            batterySensor?: boolean;
            branches: components["schemas"]["PlanBranch"][];
            capacitor?: components["schemas"]["PlanCapacitor"];
            converter?: components["schemas"]["PlanConverter"];
            insideWire?: components["schemas"]["PlanSpeakerWire"];
            notPlanned: components["schemas"]["PlanNotPlanned"][];
            secondBattery?: components["schemas"]["PlanSecondBattery"];
            signalLead: components["schemas"]["PlanSignalLead"];
            speakerWire?: components["schemas"]["PlanSpeakerWire"];
            trunk?: components["schemas"]["PlanTrunk"];
            turnOnRelay?: components["schemas"]["PlanTurnOnRelay"];
        };
        /** The voice coils of one driver and the connection its sheet speaks of. */
        PlanCoils: {
            /**
             * Voice coils
             * @enum {integer}
             */
            count: 1 | 2 | 4;
            /** Rated impedance of one coil */
            ratedOhm: number;
            /** Connection that Re of the sheet belongs to */
            resistanceStatedFor?: components["schemas"]["CoilConnection"];
            /** Connection that Bl, Q and Le of the sheet belong to */
            statedFor?: components["schemas"]["CoilConnection"];
        };
        PlanConverter: {
            ground?: components["schemas"]["PlanGroundLead"];
            inputV: number;
            lead?: components["schemas"]["PlanLead"];
            nominalV: number;
            outputV: number;
            ratedA: number;
            ratedInputA: number;
        };
        PlanCover: {
            asked?: components["schemas"]["PlanAsked"];
            band?: components["schemas"]["PlanBand"];
            pageOne: components["schemas"]["PlanFirstCaution"][];
            portAir?: components["schemas"]["PlanPortAir"];
            powerW?: number;
            radiators?: components["schemas"]["PlanRadiatorTravel"];
            sentence: string;
            travel?: components["schemas"]["PlanTravel"];
        };
        /** One of the drivers, all alike. */
        PlanDriver: {
            coils: components["schemas"]["PlanCoils"];
            mounting?: components["schemas"]["DriverMounting"];
            /** Name */
            name?: string;
            /** Price of one, in the currency of amplifier and sheets */
            price?: number;
            /** Its data sheet */
            sheet: components["schemas"]["DriverSheet"];
        };
        /** What the box should be */
        PlanEnclosure: {
            /** Highest peak air speed in the port */
            airSpeedMPerS?: number;
            /** Of a band-pass */
            frontVolumeL?: number;
            /** Wish in plain words */
            goal?: components["schemas"]["DesignGoal"];
            /** `closed` is tighter and smaller, `vented` louder and reaches lower, `passive-radiator` as low without the length and noise of a port, by those of `passiveRadiators` */
            kind?: components["schemas"]["BoxKind"];
            /** Net volume wanted */
            netVolumeL?: number;
            /** Clear area wanted of the port */
            portAreaCm2?: number;
            /** Face for tubes */
            portFace?: components["schemas"]["ShellFace"];
            /** Radius to which both mouths of the port open */
            portFlareMm?: number;
            /** Shape of the port */
            portShape?: components["schemas"]["PortShape"];
            /** Total Q wanted of a closed box */
            qtc?: number;
            /** Passive radiators in the box */
            radiatorCount?: number;
            /** Face for them, or `sides` for half of them on each */
            radiatorFace?: components["schemas"]["RadiatorFace"];
            /** Tuning wanted of port or radiators */
            tuningHz?: number;
        };
        PlanFacePatch: {
            mounting: components["schemas"]["PlanMountingPatch"];
        };
        PlanFigures: {
            airSpeedMPerS?: number;
            averageA?: number;
            cableRuns?: number;
            coneExcursionMm?: number;
            depthMm?: number;
            f3Hz?: number;
            fullSineA?: number;
            fuseA?: number;
            gainV?: number;
            heightMm?: number;
            loadOhm?: number;
            massKg?: number;
            netVolumeL?: number;
            peakLevelDb?: number;
            powerCable?: string;
            powerW?: number;
            tuningHz?: number;
            widthMm?: number;
        };
        /** How the box is finished. */
        PlanFinish: {
            /** Whether the box is covered with carpet */
            covered?: boolean;
            /** Whether the walls are lined with wadding */
            lined?: boolean;
        };
        PlanFinishPatch: {
            covered: boolean;
        };
        PlanFirstCaution: {
            clause: string;
            code: components["schemas"]["CautionCode"];
            sentence: string;
            step?: number;
        };
        PlanGroundLead: {
            designation: string;
            lengthM: number;
        };
        PlanHazard: {
            barrier: string;
            basis: string;
            caution?: components["schemas"]["CautionCode"];
            /** @enum {string} */
            hands: "maker" | "second-person" | "several-people" | "trained-person";
            /** @enum {string} */
            harm: "death" | "lasting-harm" | "fire" | "illness" | "injury" | "law" | "damage";
            id: string;
            peculiar: boolean;
            proof: string;
            steps: string[];
        };
        PlanHeadroom: {
            limits: components["schemas"]["ReachedLimit"][];
            text: string;
            ways: components["schemas"]["DriveWay"][];
        };
        PlanLead: {
            designation: string;
            endFuse?: components["schemas"]["ChosenFuse"];
            fuse?: components["schemas"]["ChosenFuse"];
            positiveLengthM: number;
            /** @enum {string} */
            returnBy: "body" | "cable";
            returnLengthM: number;
            runs: number;
        };
        PlanMountingPatch: {
            /** @enum {unknown} */
            face: "top" | null;
        };
        PlanNotPlanned: {
            level: components["schemas"]["CautionLevel"];
            text: string;
            what: string;
        };
        /** What stands on pages and papers beside the plan */
        PlanPaper: {
            /** Who publishes the plan */
            author?: string;
            /** Date of this revision, as it shall be printed */
            date?: string;
            /** How inches are written */
            inches?: components["schemas"]["InchStyle"];
            /** Licence the plan is published under */
            licence?: string;
            /** Address at which the plan can be made again */
            link?: string;
            /** Revision */
            revision?: string;
            /** Units on paper */
            units?: components["schemas"]["PaperUnits"];
        };
        PlanParts: {
            box?: components["schemas"]["LayOutBoxPart"];
            cable?: components["schemas"]["ChooseCablePart"];
            circuit?: components["schemas"]["ComputeCircuitPart"];
            current?: components["schemas"]["ComputeCurrentPart"];
            driver?: components["schemas"]["CompleteDriverParametersPart"];
            fuse?: components["schemas"]["RateFusePart"];
            matching?: components["schemas"]["MatchAmplifierPart"];
            port?: components["schemas"]["SizePortPart"];
            response?: components["schemas"]["ComputeResponsePart"];
            sheets?: components["schemas"]["NestPanelsPart"];
            signal?: components["schemas"]["SetUpSignalPart"];
            sizing?: components["schemas"]["SizeEnclosurePart"];
            wiring?: components["schemas"]["WireCoilsPart"];
        };
        /** Passive radiators at hand, all alike */
        PlanPassiveRadiators: {
            mounting: components["schemas"]["PassiveRadiatorMounting"];
            /** Name */
            name?: string;
            sheet: components["schemas"]["PassiveRadiatorSheet"];
        };
        PlanPortAir: {
            finding: string;
            held: boolean;
            limitMPerS: number;
            peakHz: number;
            peakMPerS: number;
            quietMPerS: number;
        };
        PlanRadiatorTravel: {
            addedG: number;
            count: number;
            face: components["schemas"]["RadiatorFace"];
            finding: string;
            held: boolean;
            limitMm: number;
            massG: number;
            peakHz: number;
            peakMm: number;
            resonanceHz: number;
            sagMm?: number;
        };
        PlanReading: {
            above?: string;
            below?: string;
            expected?: number;
            highest?: number;
            lowest?: number;
            probes: string;
            step: string;
            /** @enum {string} */
            unit: "V" | "mV" | "A" | "mA" | "mΩ" | "Ω";
            what: string;
            when: string;
        };
        PlanReason: {
            code: string;
            detail: string;
            part?: string;
            pointer?: string;
        };
        PlanRemedy: {
            after: components["schemas"]["RemedyFigures"];
            before: components["schemas"]["RemedyFigures"];
            /** @enum {string} */
            cost: "reading" | "setting" | "cable" | "converter" | "battery" | "alternator" | "driver";
            cures: components["schemas"]["CautionCode"][];
            /** @enum {string} */
            id: "converter" | "measure-body" | "bridging" | "lower-gain" | "smaller-size" | "other-insulation" | "next-size" | "parallel-runs" | "full-copper" | "return-cable" | "second-battery" | "stronger-alternator" | "other-coils";
            patch: components["schemas"]["RemedyPatch"];
            text: string;
        };
        /** Data sheets, the car and its supply */
        PlanRequest: {
            air?: components["schemas"]["Air"];
            amplifier: components["schemas"]["PlanAmplifier"];
            board: components["schemas"]["PlanBoard"];
            car: components["schemas"]["PlanCar"];
            driver: components["schemas"]["PlanDriver"];
            /** Drivers, all alike, in one box */
            driverCount: number;
            enclosure?: components["schemas"]["PlanEnclosure"];
            finish?: components["schemas"]["PlanFinish"];
            /** Title of the plan */
            name?: string;
            paper?: components["schemas"]["PlanPaper"];
            passiveRadiators?: components["schemas"]["PlanPassiveRadiators"];
            signal: components["schemas"]["PlanSignal"];
            supply: components["schemas"]["PlanSupply"];
            workshop?: components["schemas"]["PlanWorkshop"];
        };
        /** Straps that hold the box, where it is not bolted. */
        PlanRestraint: {
            /** What one lashing eye holds, by the vehicle’s handbook */
            eyeStrengthN?: number;
            /** Lashing capacity printed on one strap */
            strapCapacityN?: number;
            /** Steepest strap, against the floor */
            strapSlopeDeg?: number;
            /** Strap farthest aside from the direction of travel, seen from above */
            strapSpreadDeg?: number;
        };
        PlanResult: {
            billOfMaterials?: components["schemas"]["BillRow"][];
            buildOrder?: components["schemas"]["BuildOrder"];
            choice?: components["schemas"]["PlanChoice"];
            circuit?: components["schemas"]["PlanCircuit"];
            commissioning?: components["schemas"]["CommissioningStep"][];
            cover?: components["schemas"]["PlanCover"];
            headroom?: components["schemas"]["PlanHeadroom"];
            name?: string;
            parts?: components["schemas"]["PlanParts"];
            readings?: components["schemas"]["PlanReading"][];
            remedies?: components["schemas"]["PlanRemedy"][];
            restraint?: components["schemas"]["Restraint"];
            safety?: components["schemas"]["PlanHazard"][];
            summary: components["schemas"]["PlanSummary"];
            tried?: components["schemas"]["PlanTried"][];
            waysOut?: components["schemas"]["PlanWaysOut"];
            whatIf?: components["schemas"]["WhatIfRow"][];
        };
        PlanSecondBattery: {
            charger?: components["schemas"]["PlanCharger"];
            lead?: components["schemas"]["PlanLead"];
            /** @enum {string} */
            link: "relay" | "charger" | "joined";
            name: string;
            relayA?: number;
            sealed?: boolean;
            signalFuseA?: number;
            signalWireM?: number;
        };
        /** The sheet the panels are cut from. */
        PlanSheetSize: {
            /** Width of the saw cut */
            kerfMm?: number;
            /** Length */
            lengthMm: number;
            /** Price of one sheet, in any currency */
            price?: number;
            /** Width */
            widthMm: number;
        };
        /** Where the music comes from and how the amplifier is switched on. */
        PlanSignal: {
            /** Line level a line-output converter is set to */
            converterLineV?: number;
            /** RMS power of all outputs to set the gain for */
            gainPowerW?: number;
            input?: components["schemas"]["SignalInput"];
            /** Amplifier inputs on one line output */
            inputsInParallel?: number;
            /** Lower end of the front loudspeakers */
            mainsLowHz?: number;
            source?: components["schemas"]["SignalSource"];
            tone?: components["schemas"]["TestTone"];
            turnOn?: components["schemas"]["TurnOnRequest"];
        };
        PlanSignalLead: {
            converter: boolean;
            count: number;
            jumperM?: number;
            /** @enum {string} */
            kind: "screened" | "twisted-pair";
            lengthM: number;
            name: string;
            turnOnLengthM: number;
        };
        /** Room for the box in the car. */
        PlanSpace: {
            /** Of a wedge */
            acrossSlopeDeg?: number;
            /** Play on every side */
            clearanceMm?: number;
            /** Carpet on every face */
            coveringMm?: number;
            /** Deepest, at the floor */
            depthMm?: number;
            /** Of a round well, as that of a spare wheel */
            diameterMm?: number;
            /** Corners of the room seen from above, in order */
            footprint?: components["schemas"]["FootprintCorner"][];
            /** Highest */
            heightMm?: number;
            /** Wheel arches and other blocks in the way */
            keepOuts?: components["schemas"]["KeepOut"][];
            /** Of a wedge */
            lidSlopeDeg?: number;
            opening?: components["schemas"]["BootOpening"];
            /** Lean of the seat back from the vertical, into the boot */
            seatSlopeDeg?: number;
            /**
             * Shape of the box
             * @enum {string}
             */
            shape?: "rectangular" | "wedge" | "prism" | "round";
            /** Which way the box grows where there is a choice */
            strategy?: components["schemas"]["BoxStrategy"];
            /** Widest */
            widthMm?: number;
        };
        PlanSpacePatch: {
            coveringMm?: number;
            depthMm?: number;
            heightMm?: number;
            widthMm?: number;
        };
        PlanSpeakerWire: {
            areaMm2: number;
            count: number;
            currentA: number;
            designation: string;
            lengthM: number;
        };
        PlanSummary: {
            figures: components["schemas"]["PlanFigures"];
            lines: string[];
            reasons: components["schemas"]["PlanReason"][];
            /** @enum {string} */
            verdict: "ready" | "take-care" | "incomplete" | "stop";
        };
        /** Battery, cable run, charging */
        PlanSupply: {
            /** Hottest surroundings along the run */
            ambientC?: number;
            battery?: components["schemas"]["BatteryRequest"];
            /** Whether the negative post wears a battery sensor */
            batterySensor?: boolean;
            /** Conductor length from the distribution block to each amplifier */
            branchLengthM?: number;
            /** Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            capacitor?: components["schemas"]["CapacitorRequest"];
            charging?: components["schemas"]["ChargingRequest"];
            /** Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            converter?: components["schemas"]["ConverterRequest"];
            /** Largest drop on the conductors, of nominal voltage */
            dropLimitPercent?: number;
            /** Battery terminal to fuse, along the cable */
            fuseDistanceMm?: number;
            /** Series of the size */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** Temperature class printed on the insulation */
            insulationC?: number;
            /** What the insulation is made of */
            insulationMaterial?: components["schemas"]["InsulationMaterial"];
            /** External fuse the amplifier’s maker states */
            makerFuseA?: number;
            /** Further amplifiers on the same run */
            otherAmplifiers?: components["schemas"]["SupplyAmplifier"][];
            /** Conductor length of the positive run */
            positiveLengthM: number;
            return: components["schemas"]["ReturnPath"];
            /** Equal cables side by side, each with a fuse of its own */
            runs?: number;
            secondBattery?: components["schemas"]["SecondBatteryRequest"];
            /** Whether that stretch lies in a sheath all the way */
            sheathed?: boolean;
            source?: components["schemas"]["BatterySource"];
            /** Spaces the run passes */
            spaces?: components["schemas"]["RunSpace"][];
            /** What the starter takes in a cold start */
            starterA?: number;
            /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58) */
            systemVoltageV: number;
            /** Largest conductor the amplifier’s terminal takes */
            terminalAreaMm2?: number;
        };
        PlanSystemAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["PlanResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        PlanTravel: {
            finding: string;
            held: boolean;
            limitMm?: number;
            peakHz: number;
            peakMm: number;
        };
        PlanTried: {
            name: string;
            netVolumeL: number;
            tuningHz?: number;
            why: string;
        };
        PlanTrunk: {
            designation: string;
            endFuse?: components["schemas"]["ChosenFuse"];
            fuse?: components["schemas"]["ChosenFuse"];
            positiveLengthM: number;
            /** @enum {string} */
            returnBy: "body" | "cable";
            returnLengthM: number;
            runs: number;
        };
        PlanTurnOnRelay: {
            coilCurrentA: number;
            coilVoltageV: number;
            designation: string;
            fuseA: number;
            tapFuseA?: number;
            wireM: number;
        };
        PlanWayOut: {
            builds: string;
            change: string;
            figures?: components["schemas"]["SystemFigures"];
            patch: components["schemas"]["WayOutPatch"];
        };
        PlanWaysOut: {
            changes: components["schemas"]["PlanWayOut"][];
            largestDriver?: components["schemas"]["LargestDriver"];
        };
        /** What the boards are worked with. */
        PlanWorkshop: {
            /**
             * Panel saw and router
             * @enum {string}
             */
            way?: "saw-and-router" | "cutting-service" | "jigsaw-and-drill";
        };
        PointVoltage: {
            point: string;
            voltageV: number;
        };
        /** Equal ports of one chamber. */
        Port: {
            /** Cross-section of one port */
            areaCm2: number;
            /** Number of equal ports */
            count?: number;
            /** Sum of both end corrections over the radius of one port */
            endFactor?: number;
            /** Physical length of one port */
            lengthMm: number;
            /** Q of the friction in the port at its tuning */
            lossQ?: number;
        };
        PortDemand: {
            areaCm2: number;
            /** @enum {string} */
            by: "network" | "swept-volume" | "given-flow";
            excursionLimitedAreaCm2?: number;
            flowAtTuningM3PerS?: number;
            limitMPerS: number;
            peakFlowHz?: number;
            peakFlowM3PerS: number;
            ruleAreaCm2?: number;
        };
        PortDesign: {
            airSpeedAtTuningMPerS?: number;
            airSpeedHz?: number;
            airSpeedMPerS?: number;
            airVolumeL: number;
            areaCm2: number;
            bends: number;
            count: number;
            diameterMm?: number;
            effectiveLengthMm: number;
            endFactor: number;
            fits: boolean;
            heightMm?: number;
            hydraulicDiameterMm: number;
            kind: components["schemas"]["PortShape"];
            lengthMm: number;
            lossFactor: number;
            lossQ: number;
            name: string;
            otherEnds: components["schemas"]["PortOtherEnds"];
            pipeResonanceHz: number;
            totalAreaCm2: number;
            tuningHz: number;
            waveguideTuningHz: number;
            why: string[];
            widthMm?: number;
            withinLimit?: boolean;
        };
        /**
         * How the ends of a port are calculated.
         * @enum {string}
         */
        PortEndModel: "convention" | "by-shape";
        /** How the ends stand. */
        PortEnds: {
            /** Inner end */
            inner?: components["schemas"]["PortEndSituation"];
            /** Outer end */
            outer?: components["schemas"]["PortEndSituation"];
        };
        /**
         * What an end of a port opens into.
         * @enum {string}
         */
        PortEndSituation: "flanged" | "free";
        PortLayout: {
            acousticLengthMm: number;
            areaCm2: number;
            cornerFill?: components["schemas"]["CornerFill"];
            count: number;
            displacedL: number;
            endFactor: number;
            flareRadiusMm?: number;
            insideLengthMm: number;
            kind: components["schemas"]["PortShape"];
            legs: number;
            lengthMm: number;
            mouthGapMm?: number;
            pipeResonanceHz: number;
            placedTuningHz?: number;
            tuningErrorPercent?: number;
            tuningHz: number;
            turnsDeg: number[];
            wantedTuningHz?: number;
        };
        PortLengthsForTuning: {
            bothFlangedMm: number;
            bothFreeMm: number;
            flangedFreeMm: number;
        };
        /**
         * Edge of a mouth.
         * @enum {string}
         */
        PortMouth: "sharp" | "flared";
        PortOtherEnds: {
            lengthMm: number;
            model: components["schemas"]["PortEndModel"];
            tuningHz: number;
        };
        /**
         * Shape of a port.
         * @enum {string}
         */
        PortShape: "round" | "slot";
        /** A vented box looking for its port. */
        PortSizingRequest: {
            air?: components["schemas"]["Air"];
            /** Peak */
            airSpeedLimitMPerS?: number;
            /** Mitred right-angle bends */
            bends?: number;
            driver?: components["schemas"]["Driver"];
            drivers?: components["schemas"]["Drivers"];
            /** `convention` */
            endModel?: components["schemas"]["PortEndModel"];
            ends?: components["schemas"]["PortEnds"];
            /** Filters and equalisers before the amplifier, in any order */
            filters?: components["schemas"]["Filter"][];
            /** Lowest frequency at which the flow is looked at */
            highPassHz?: number;
            /** Leak of the box as a Q at the tuning */
            leakQ?: number;
            /** Upper end of the range the box plays */
            lowPassHz?: number;
            /** Ends `sharp`, or `flared` at both sides */
            mouth?: components["schemas"]["PortMouth"];
            /** Net volume of its chamber, port and driver taken off */
            netVolumeL: number;
            /** In place of the driver */
            peakFlowM3PerS?: number;
            port?: components["schemas"]["PortWish"];
            /** Of a band-pass */
            rearVolumeL?: number;
            /** Full drive */
            source?: components["schemas"]["Source"];
            space?: components["schemas"]["PortSpace"];
            /** In place of the driver */
            sweptVolumeL?: number;
            /** Tuning */
            tuningHz?: number;
        };
        PortSizingResult: {
            candidates: components["schemas"]["PortDesign"][];
            demand?: components["schemas"]["PortDemand"];
            fits: boolean;
            recommended: components["schemas"]["PortDesign"];
            tuningHz: number;
            waysOut: components["schemas"]["PortWayOut"][];
        };
        /** Room for the port. */
        PortSpace: {
            /** Longest centre line with bends */
            bentMm?: number;
            /** Longest straight run from the outer face, clearance behind the mouth taken off */
            straightMm?: number;
        };
        PortWayOut: {
            airSpeedMPerS?: number;
            /** @enum {string} */
            change: "one-bend" | "smaller-area" | "larger-area" | "fewer-ports" | "larger-box" | "higher-tuning" | "smaller-box-higher-tuning" | "flared-mouths" | "less-drive" | "narrower-slot" | "passive-radiator";
            count?: number;
            detail: string;
            lengthMm?: number;
            netVolumeL?: number;
            powerShare?: number;
            radiatorAreaCm2?: number;
            radiatorMassG?: number;
            totalAreaCm2?: number;
            tuningHz?: number;
        };
        /** The kind of port, and whatever of its size is fixed. */
        PortWish: components["schemas"]["RoundPortWish"] | components["schemas"]["SlotPortWish"];
        /** An upright box over a free polygon. */
        Prism: {
            /** Edge with the front */
            baffleEdge?: number;
            /** Outer corners in order, either way round */
            footprint: components["schemas"]["FootprintCorner"][];
        };
        Problem: {
            code: components["schemas"]["ProblemCode"];
            detail: string;
            errors?: components["schemas"]["ProblemError"][];
            instance?: string;
            status: number;
            title: string;
            type: string;
        };
        ProblemCatalogue: {
            problems: components["schemas"]["ProblemKind"][];
        };
        /** Code of a problem */
        ProblemCode: string;
        ProblemError: {
            bounds?: {
                [key: string]: unknown;
            };
            code: string;
            detail: string;
            parameter?: string;
            pointer: string;
        };
        ProblemKind: {
            code: string;
            meaning: string;
            status: number;
            title: string;
            type: string;
        };
        ProgrammeLimit: {
            atHz: number;
            limit: components["schemas"]["LimitName"];
            powerW: number;
            voltageV: number;
        };
        /** A cable a fuse protects. */
        ProtectedCable: {
            /** Hottest surroundings along the run */
            ambientC?: number;
            /** Current-carrying power conductors in the same loom, this one included */
            bundledConductors?: number;
            /** Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            /** Size with its series */
            designation: string;
            /** Series of the size */
            gaugeSystem?: components["schemas"]["GaugeSystem"];
            /** Temperature class printed on the insulation */
            insulationC?: number;
            /** Spaces the run passes */
            spaces?: components["schemas"]["RunSpace"][];
        };
        PureSpread: {
            mean: number;
            nominal: number;
            percentiles: number[];
            standardDeviation: number;
        };
        /** A chamber with passive radiators. */
        RadiatorChamber: {
            /** Q of the absorption at the frequency of the chamber */
            absorptionQ?: number;
            /** Q of the leak to the outside at the frequency of the chamber */
            leakQ?: number;
            /** Acoustic volume for all drivers together */
            netVolumeL: number;
            passiveRadiators: components["schemas"]["PassiveRadiators"];
        };
        /**
         * Where passive radiators stand in a box.
         * @enum {string}
         */
        RadiatorFace: "front" | "back" | "top" | "bottom" | "left" | "right" | "sides";
        /**
         * What a power of a data sheet stands for
         * @enum {string}
         */
        RatedPower: "continuous" | "peak" | "unknown";
        RateFuseAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["FuseResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        RateFuseDone: {
            answer: components["schemas"]["RateFuseAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["FuseRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/supply/fuses gives, or why not. */
        RateFusePart: components["schemas"]["RateFuseDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /**
         * What kind of figure a rated power is.
         * @enum {string}
         */
        RatingKind: "rms" | "peak" | "max" | "total";
        ReachedLimit: {
            atHz: number;
            limit: components["schemas"]["LimitName"];
            powerW: number;
        };
        RegionOfDriversAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["DriverRegion"];
            sources: components["schemas"]["SourceIdList"];
        };
        /** A system that was dropped, and why. */
        RejectedDesign: {
            /** Name of the amplifier */
            amplifier: string;
            /** By how much the limit is broken, in `unit` */
            beyond?: number;
            /** The limit, in `unit` */
            bound?: number;
            /** Why, with figures */
            detail: string;
            /** Name of the driver */
            driver: string;
            /** Drivers */
            driverCount: number;
            /** Of the box that came nearest */
            figures?: components["schemas"]["ForeseenFigures"];
            /** Kind of box */
            kind: components["schemas"]["SearchedKind"];
            /** `match` */
            rule: components["schemas"]["RejectionRule"];
            /** Unit of the figure */
            unit?: string;
            /** The figure that breaks the limit, in `unit` */
            value?: number;
        };
        /** How many systems one reason dropped. */
        RejectionCount: {
            /** Systems */
            count: number;
            /** Reason */
            rule: components["schemas"]["RejectionRule"];
        };
        /** Why a system was not chosen */
        RejectionRule: string;
        RelayTerminal: {
            /** @enum {string} */
            terminal: "30" | "85" | "86" | "87";
            to: string;
        };
        RemedyFigures: {
            cable?: string;
            fullSineV?: number;
            heavyV?: number;
            powerW?: number;
        };
        RemedyPatch: {
            amplifier?: components["schemas"]["AmplifierPatch"];
            driver?: components["schemas"]["CoilsPatch"];
            signal?: components["schemas"]["SignalPatch"];
            supply?: components["schemas"]["SupplyPatch"];
        };
        ResistanceSpread: {
            meanOhm: number;
            nominalOhm: number;
            percentilesOhm: number[];
            standardDeviationOhm: number;
        };
        ResponseCurves: {
            apparentPowerVa: number[];
            cabinGainDb?: number[];
            coilCompressionDb?: number[];
            compressedLevelDb?: number[];
            coneExcursionMm: number[];
            coneVelocityMPerS: number[];
            currentA: number[];
            filterGainDb?: number[];
            filterGroupDelayMs?: number[];
            filterPhaseDeg?: number[];
            frequencyHz: number[];
            frontChamberPressurePa?: number[];
            frontPassiveRadiatorExcursionMm?: number[];
            frontPortAirSpeedMPerS?: number[];
            governingLimit?: components["schemas"]["LimitName"][];
            groupDelayMs: number[];
            impedanceOhm: number[];
            impedancePhaseDeg: number[];
            levelDb: number[];
            maximumLevelDb?: number[];
            maximumSeatLevelDb?: number[];
            maximumVoltageV?: number[];
            passiveRadiatorExcursionMm?: number[];
            phaseDeg: number[];
            portCompressionDb?: number[];
            rearChamberPressurePa?: number[];
            rearPortAirSpeedMPerS?: number[];
            seatLevelDb?: number[];
        };
        ResponseScalars: {
            alpha?: number;
            downwardCrossings?: number;
            excursionMinima: components["schemas"]["ExcursionExtreme"][];
            excursionPeaks: components["schemas"]["ExcursionExtreme"][];
            f3Hz?: number;
            f3UpperHz?: number;
            fcHz?: number;
            frontAlpha?: number;
            frontPassiveRadiatorResonanceHz?: number;
            frontPassiveRadiatorVasL?: number;
            frontPortEffectiveLengthMm?: number;
            frontPortLengths?: components["schemas"]["PortLengthsForTuning"];
            frontTuningHz?: number;
            impedanceMinima: components["schemas"]["ImpedanceExtreme"][];
            impedancePeaks: components["schemas"]["ImpedanceExtreme"][];
            passiveRadiatorResonanceHz?: number;
            passiveRadiatorVasL?: number;
            peakLevelDb: number;
            peakLevelHz: number;
            portEffectiveLengthMm?: number;
            portLengths?: components["schemas"]["PortLengthsForTuning"];
            qec?: number;
            qmc?: number;
            qtc?: number;
            referenceLevelDb?: number;
            tuningHz?: number;
            tuningRatio?: number;
            upwardCrossings?: number;
            voltageV: number;
        };
        Restraint: {
            advice: string[];
            crashForceN: number;
            drivingForwardN: number;
            drivingRearwardN: number;
            drivingSidewaysN: number;
            eyeStrengthN: number;
            massKg: number;
            strapCapacityN: number;
            strapCount: number;
            strapSlopeDeg: number;
            strapSpreadDeg: number;
        };
        /** A return conductor of the size of the positive. */
        ReturnCable: {
            /**
             * Return by cable (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "cable";
            /** Conductor length of the return */
            lengthM: number;
        };
        /** The body as return, behind a short ground lead. */
        ReturnChassis: {
            /** What the body is made of */
            body?: components["schemas"]["ChassisBody"];
            /**
             * Return through the body (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "chassis";
            /** Ground lead, of the size of the positive */
            leadLengthM?: number;
            /** Body between ground bolt and battery post */
            resistanceOhm?: number;
        };
        ReturnPatch: {
            body?: null;
            /** @enum {string} */
            kind: "cable" | "chassis";
            leadLengthM?: null;
            lengthM?: number;
            resistanceOhm?: number | null;
        };
        /** The way back to the battery. */
        ReturnPath: components["schemas"]["ReturnCable"] | components["schemas"]["ReturnChassis"];
        /** Equal tubes. */
        RoundPort: {
            /** Centre of each tube */
            centres?: components["schemas"]["PlaceOnPanel"][];
            /** Chamber of a band-pass box it opens from */
            chamber?: components["schemas"]["ChamberName"];
            /** Tubes */
            count?: number;
            /** Centre line of one elbow of 90° */
            elbowRadiusMm?: number;
            /** Sum of both end factors, in radii of the circle of equal area */
            endFactor?: number;
            /** Face that carries the tubes */
            face?: components["schemas"]["FaceName"];
            /** Flange at the inner mouth */
            flangeDiameterMm?: number;
            /** Thickness of that flange */
            flangeThicknessMm?: number;
            /** Radius to which both mouths open, within the length */
            flareRadiusMm?: number;
            /** Bore */
            innerDiameterMm: number;
            /** The part behind the inner face of the panel, instead of the whole length */
            insideLengthMm?: number;
            /**
             * Tubes (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "round";
            /** Outer face of the panel to the inner mouth, along the centre line */
            lengthMm?: number;
            /** Outside of the tube */
            outerDiameterMm?: number;
            /** Instead of a length */
            tuningHz?: number;
        };
        /** Round ports */
        RoundPortWish: {
            /** Equal ports */
            count?: number;
            /** Clear diameter of one */
            diameterMm?: number;
            /** Radius of a rounding at both mouths, part of the length */
            flareRadiusMm?: number;
            /**
             * Shape (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "round";
            /** Physical length, to learn the tuning of a port given whole */
            lengthMm?: number;
        };
        /** Writes the drawing exchange file for a router */
        RouterCut: {
            /** Diameter of the cutter */
            cutterMm: number;
            /** Whether inside corners are cut past their point, so that a square part goes in */
            dogBones?: boolean;
            /** Whether bridges that hold the parts in the sheet are marked */
            tabs?: boolean;
        };
        Routing: {
            dogBones: boolean;
            radiusMm: number;
            tabs: boolean;
        };
        /**
         * A space that a cable runs through.
         * @enum {string}
         */
        RunSpace: "engine-bay" | "cabin" | "boot";
        Schema: {
            $defs: {
                [key: string]: unknown;
            };
        };
        ScrewCircle: {
            count: number;
            diameterMm: number;
            holeDiameterMm: number;
            screw: string;
            startAngleDeg: number;
        };
        /** An amplifier that could be bought. */
        SearchAmplifier: {
            /** Channels */
            channels?: number;
            /** Class of the output stage */
            class?: components["schemas"]["AmplifierClass"];
            /** Read where the amplifier itself is silent */
            draw?: components["schemas"]["AmplifierDraw"];
            /** Output over input at rated output, from the data sheet */
            efficiency?: number;
            /** Area it takes where it is mounted */
            footprintCm2?: number;
            /** Input current at rated output, from the data sheet */
            inputCurrentA?: number;
            /** Supply voltage of that input current */
            inputVoltageV?: number;
            /** Lowest load of a bridged pair */
            minimumBridgedOhm?: number;
            /** Lowest load of one channel */
            minimumOhm: number;
            /** Name, unlike the others */
            name: string;
            /** Fuses on the amplifier */
            onboardFusesA?: number[];
            /** Price, in any one currency */
            price?: number;
            /** Idle draw */
            quiescentW?: number;
            /** Supply at which the powers are rated, for what the fuses pass */
            ratedVoltageV?: number;
            /** What kind of figure each rating is */
            ratingKind?: components["schemas"]["RatingKind"];
            /** Published powers, one a load */
            ratings: components["schemas"]["AmplifierRating"][];
            /**
             * Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** Draw when switched off */
            standbyA?: number;
        };
        SearchDesignsAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["DesignSearchResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        /** A driver that could be bought */
        SearchDriver: {
            coils: components["schemas"]["PlanCoils"];
            mounting?: components["schemas"]["DriverMounting"];
            /** Name, unlike the others */
            name: string;
            /** Price of one, in the currency of the amplifiers */
            price?: number;
            /** Its data sheet */
            sheet: components["schemas"]["DriverSheet"];
        };
        /**
         * Kind of box that a search weighs.
         * @enum {string}
         */
        SearchedKind: "closed" | "vented" | "passive-radiator";
        /** One part of a search */
        SearchPart: {
            /** What they are warned of, each once */
            cautions: components["schemas"]["PartCaution"][];
            /** The others by their reason */
            dropped: components["schemas"]["RejectionCount"][];
            /** Of the request */
            fingerprint: string;
            /** The first of those dropped */
            rejected: components["schemas"]["RejectedDesign"][];
            /** Where nothing stands */
            relaxations: components["schemas"]["NearSystem"][];
            shard: components["schemas"]["SearchShard"];
            /** Of them those that are foreseen to keep every limit */
            standing: number;
            /** What was built in figures, in turn */
            tried: components["schemas"]["TriedSystem"][];
            /** What no other system of the part is foreseen to equal */
            unbeaten: components["schemas"]["UnbeatenSystem"][];
            /** Systems weighed */
            weighed: number;
        };
        /** How ports are sized, as in a plan. */
        SearchPort: {
            /** Peak air speed it is sized for */
            airSpeedMPerS?: number;
            /** Shape of the port */
            shape?: components["schemas"]["PortShape"];
        };
        /** The least that has to be given way for one system to be left. */
        SearchRelaxation: {
            /** Name of the amplifier */
            amplifier: string;
            /** Name of the driver */
            driver: string;
            /** Drivers */
            driverCount: number;
            /** Of the system as it was built in figures */
            figures: components["schemas"]["DesignFigures"];
            /** Each limit that gives way, beside the figure it has to reach */
            gives: components["schemas"]["LimitReading"][];
            /** Kind of box */
            kind: components["schemas"]["SearchedKind"];
            /** JSON Merge Patch (RFC 7396) onto the request */
            patch: {
                /** Only the bounds that change */
                limits: components["schemas"]["DesignLimits"];
            };
        };
        /** One of several equal parts of a search. */
        SearchShard: {
            /** Which part, from 0 */
            index: number;
            /** How many parts there are */
            of: number;
        };
        /** A place in the order of a search. */
        SearchTurn: {
            /** The figure of `rankBy` in SI, less is better */
            deciding: number;
            /** Sum of the points, which decides next */
            score: number;
        };
        SecondBatteryPatch: {
            /** @enum {string} */
            arrangement: "isolated";
            capacityAh: number;
            chemistry: components["schemas"]["BatteryChemistry"];
        };
        /** A further battery for the music. */
        SecondBatteryRequest: {
            /**
             * `isolated` feeds the amplifiers alone when the engine is off
             * @enum {string}
             */
            arrangement: "isolated" | "parallel";
            /** Capacity of the bank at the rated hours */
            capacityAh: number;
            /** Kind of battery */
            chemistry?: components["schemas"]["BatteryChemistry"];
            /** Cold cranking current at −18 °C */
            coldCrankingA?: number;
            /** Peukert exponent */
            peukertExponent?: number;
            /** Hours the capacity is printed for */
            ratedHours?: number;
            /** Reserve capacity */
            reserveMinutes?: number;
            /** Internal resistance of the bank */
            resistanceOhm?: number;
            /** Share of the time to empty that may be used */
            usableFraction?: number;
        };
        SecondOpinion: {
            f3Hz: number;
            method: string;
            netVolumeL: number;
            tuningHz: number;
        };
        Sensitivity: {
            effectPercent: number;
            elasticity: number;
            /** @enum {string} */
            figure: "f3" | "f3-upper" | "tuning" | "front-tuning" | "closed-resonance" | "driver-resonance" | "driver-total-q" | "peak-excursion" | "peak-air-speed" | "minimum-impedance";
            /** @enum {string} */
            parameter: "coil-resistance" | "force-factor" | "moving-mass" | "suspension-compliance" | "suspension-resistance" | "cone-area" | "coil-inductance" | "rear-volume" | "rear-port-length" | "rear-port-area" | "rear-radiator-mass" | "rear-radiator-compliance" | "rear-losses" | "front-volume" | "front-port-length" | "front-port-area" | "front-radiator-mass" | "front-radiator-compliance" | "front-losses" | "air-temperature";
            sharePercent: number;
            standardDeviationPercent: number;
        };
        SentenceTemplate: {
            id: string;
            text: string;
        };
        SetUpSignalAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["SignalSetupResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        SetUpSignalDone: {
            answer: components["schemas"]["SetUpSignalAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["SignalSetupRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/signal/setup gives, or why not. */
        SetUpSignalPart: components["schemas"]["SetUpSignalDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        /** The voice coils of the driver and the connection the sheet speaks of. */
        SheetCoils: {
            /**
             * Voice coils of the driver
             * @enum {integer}
             */
            count: 1 | 2 | 4;
            /** Connection that Re of the sheet belongs to */
            resistanceStatedFor?: components["schemas"]["CoilConnection"];
            /** Connection that Bl, Q and Le of the sheet belong to */
            statedFor?: components["schemas"]["CoilConnection"];
            /** Connection the answer is for */
            wanted?: components["schemas"]["CoilConnection"];
        };
        SheetCut: {
            /** @enum {string} */
            along: "length" | "width";
            atMm: number;
            cutLengthM: number;
            distanceMm: number;
            far?: components["schemas"]["FreedPart"];
            fromMm: number;
            near: components["schemas"]["FreedPart"];
            part: number;
            step: number;
            toMm: number;
        };
        SheetLayout: {
            cuts: components["schemas"]["SheetCut"][];
            lengthMm: number;
            material?: string;
            number: number;
            offcuts: components["schemas"]["SheetOffcut"][];
            pieces: components["schemas"]["LaidPiece"][];
            sheet: string;
            thicknessMm: number;
            trimMm: number;
            usedPercent: number;
            widthMm: number;
        };
        SheetOffcut: {
            lengthMm: number;
            reusable: boolean;
            widthMm: number;
            xMm: number;
            yMm: number;
        };
        /** Equal panels to be cut. */
        SheetPanel: {
            /** Side of the panel that the grain follows */
            grain?: components["schemas"]["PanelGrain"];
            /** Length of the blank */
            lengthMm: number;
            /** Material, as the sheets name it */
            material?: string;
            /** Name of the panel, as it shall stand on the cut sheet */
            name: string;
            /** How many */
            quantity: number;
            /** Nominal thickness of the board */
            thicknessMm: number;
            /** Width of the blank */
            widthMm: number;
        };
        /** Panels to be cut, and the sheets to be had. */
        SheetPlanRequest: {
            /** Shorter side of an offcut worth keeping */
            keepOffcutMm?: number;
            /** Width of the saw cut */
            kerfMm?: number;
            /** Panels */
            panels: components["schemas"]["SheetPanel"][];
            /** Sheets */
            sheets: components["schemas"]["SheetStock"][];
            /** Cut off every edge of a raw sheet first, kerf included */
            trimMm?: number;
        };
        SheetPlanResult: {
            boards: components["schemas"]["BoardSummary"][];
            layouts: components["schemas"]["SheetLayout"][];
            total: components["schemas"]["SheetPlanTotal"];
        };
        SheetPlanTotal: {
            cutCount: number;
            cutLengthM: number;
            panelAreaM2: number;
            panelCount: number;
            price?: number;
            sheetAreaM2: number;
            sheetCount: number;
            wasteAfterOffcutsPercent: number;
            wastePercent: number;
            yieldPercent: number;
        };
        /** Equal sheets to cut from. */
        SheetStock: {
            /**
             * Side of the sheet that the grain follows, `length` by default
             * @enum {string}
             */
            grain?: "length" | "width" | "none";
            /** Length of the raw sheet */
            lengthMm: number;
            /** Material */
            material?: string;
            /** Name of the sheet */
            name: string;
            /** Price of one sheet, in one currency for all */
            price?: number;
            /** Sheets to be had */
            quantity?: number;
            /** Nominal thickness of the board */
            thicknessMm: number;
            /** Width of the raw sheet */
            widthMm: number;
        };
        /**
         * A face of a box.
         * @enum {string}
         */
        ShellFace: "front" | "back" | "top" | "bottom" | "left" | "right";
        ShortCircuitAnswer: {
            k: number;
            letThroughA2s: number;
            minimumAreaMm2: number;
            sizes: components["schemas"]["ShortCircuitSize"][];
        };
        /** A short circuit the conductor must survive. */
        ShortCircuitRequest: {
            /** Fault current */
            currentA: number;
            /** How long it flows */
            durationS: number;
            /** What the insulation survives once */
            endC?: number;
            /** Heat capacity of the metal by volume */
            heatCapacityJPerM3K?: number;
            /** Conductor before the fault */
            startC?: number;
        };
        ShortCircuitSize: {
            designation: string;
            survivesA: number;
            survivesS: number;
            withstandA2s: number;
            withstands: boolean;
        };
        /** The output whose gain is set. */
        SignalAmplifier: {
            /** Whether the output is a bridged pair of channels */
            bridged?: boolean;
            input?: components["schemas"]["SignalInput"];
            /** Load that is wired */
            loadOhm: number;
            /** Continuous RMS power into loadOhm */
            powerW: number;
            /** What kind of figure powerW is */
            ratingKind?: components["schemas"]["RatingKind"];
        };
        /** The corners wanted, or what they can be derived from. */
        SignalFilters: {
            acoustic?: components["schemas"]["AcousticFacts"];
            /** Protective high-pass */
            highPass?: components["schemas"]["FilterCorner"];
            lowPass?: components["schemas"]["FilterCorner"];
        };
        SignalFiltersSet: {
            highPass?: components["schemas"]["FilterCornerSet"];
            lowPass: components["schemas"]["FilterCornerSet"];
        };
        /** The amplifier's input. */
        SignalInput: {
            /** Whether the input is differential or isolated */
            differential?: boolean;
            /** Highest input voltage its gain control covers */
            highestV?: number;
            /** Input resistance */
            inputOhm?: number;
            /** Lowest input voltage at which it can give full output */
            lowestV?: number;
            /** Highest voltage of its speaker-level input */
            speakerLevelV?: number;
        };
        SignalInputLevel: {
            /** @enum {string} */
            connection: "line" | "speaker-level-input" | "line-output-converter" | "digital-converter";
            converterDb?: number;
            inputOhm?: number;
            levelV: number;
            loadingDb?: number;
            outputOhm?: number;
            sourceV: number;
            why: string;
        };
        SignalPatch: {
            gainPowerW: number;
        };
        /** The way from the music source to one amplifier output. */
        SignalSetupRequest: {
            amplifier: components["schemas"]["SignalAmplifier"];
            /** Line level a line-output converter is set to */
            converterLineV?: number;
            /** Sum of the continuous ratings of the drivers on this output */
            driversPowerW?: number;
            filters?: components["schemas"]["SignalFilters"];
            /** Power of each output the gain shall be set for, where it is less than amplifier and drivers bear */
            gainPowerW?: number;
            /** Amplifier inputs on one line output */
            inputsInParallel?: number;
            source?: components["schemas"]["SignalSource"];
            /** Nominal voltage of the amplifier’s supply, 12, 24 or 48 */
            systemVoltageV?: number;
            tone?: components["schemas"]["TestTone"];
            turnOn?: components["schemas"]["TurnOnRequest"];
            /** Nominal voltage of the vehicle, where a converter feeds the amplifier */
            vehicleVoltageV?: number;
        };
        SignalSetupResult: {
            filters: components["schemas"]["SignalFiltersSet"];
            gain: components["schemas"]["GainSetting"];
            input?: components["schemas"]["SignalInputLevel"];
            path?: components["schemas"]["SignalStage"][];
            steps: components["schemas"]["SignalStep"][];
            turnOn?: components["schemas"]["TurnOn"];
        };
        /** Where the signal comes from. */
        SignalSource: components["schemas"]["LineLevelSource"] | components["schemas"]["SpeakerLevelSource"] | components["schemas"]["DigitalSource"];
        SignalStage: {
            levelV: number;
            stage: string;
        };
        SignalStep: {
            cautions: components["schemas"]["CautionCode"][];
            /** @enum {string} */
            id: "start-safe" | "speaker-resistance" | "cone-polarity" | "turn-on" | "source-level" | "speakers-off" | "gain" | "bridge-halves" | "clipping" | "speakers-on" | "filters" | "acoustic-polarity" | "level" | "warm-check";
            passIf: string;
            text: string;
        };
        SizedPassiveRadiators: {
            areaCm2: number;
            complianceMmPerN: number;
            count: number;
            delta: number;
            excursionMm?: number;
            massG: number;
            resonanceHz: number;
        };
        SizeEnclosureAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["EnclosureSizingResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        SizeEnclosureDone: {
            answer: components["schemas"]["SizeEnclosureAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["EnclosureSizingRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/enclosures/sizing gives, or why not. */
        SizeEnclosurePart: components["schemas"]["SizeEnclosureDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        SizePortAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["PortSizingResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        SizePortDone: {
            answer: components["schemas"]["SizePortAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["PortSizingRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/ports/sizing gives, or why not. */
        SizePortPart: components["schemas"]["SizePortDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        SizingCurrents: {
            fullSineA: number;
            heavyA: number;
        };
        /** Fibre in the box. */
        SizingLining: {
            /**
             * `bare`, `walls` lined, or `filled`
             * @enum {string}
             */
            amount: "bare" | "walls" | "filled";
            /** Apparent over actual volume */
            volumeFactor?: number;
        };
        /** Losses of the box, each a Q at its tuning or resonance. */
        SizingLosses: {
            /** Absorption in the air and its lining */
            absorptionQ?: number;
            /** Leakage */
            leakQ?: number;
            /** Friction in the port */
            portQ?: number;
        };
        /** Passive radiators at hand */
        SizingPassiveRadiators: {
            /** Effective area of one */
            areaCm2?: number;
            /** Compliance of one */
            complianceMmPerN?: number;
            /** Units */
            count?: number;
            /** Mechanical Q of one in free air */
            qm?: number;
        };
        /** What lies before the drivers. */
        SizingSource: {
            /** Resistance of amplifier and cable before the drivers */
            seriesOhm?: number;
        };
        /** Room there is. */
        SizingSpace: {
            /** Largest air volume */
            netVolumeL: number;
        };
        /** What the box should come out as */
        SizingWanted: {
            /** Beside it */
            frontVolumeL?: number;
            /** Upper half-power edge of a band-pass */
            highHz?: number;
            /** Lower half-power edge of a band-pass */
            lowHz?: number;
            /** A volume to be judged as it is */
            netVolumeL?: number;
            /** Total Q of closed boxes to offer */
            qtc?: number[];
            /** A tuning to be judged as it is */
            tuningHz?: number;
        };
        /** A slot along the walls of the box. */
        SlotPort: {
            /**
             * Wall it starts on, folding on round the box as its length needs
             * @enum {string}
             */
            along?: "bottom" | "top" | "left" | "right";
            /** Sum of both end factors, in radii of the circle of equal area */
            endFactor?: number;
            /** Radius to which the board across from its wall is rounded at both mouths, within the length */
            flareRadiusMm?: number;
            /** Smaller side of the opening */
            heightMm: number;
            /**
             * Slot (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "slot";
            /** Outer face of the front to the inner mouth, along the centre line */
            lengthMm?: number;
            /** Outer corners of its bends filled to a quarter round of its height, in a square box */
            roundCorners?: boolean;
            /** Instead of a length */
            tuningHz?: number;
            /** Board of its own walls */
            wallThicknessMm?: number;
            /** Across the opening */
            widthMm?: number;
        };
        /** Slots */
        SlotPortWish: {
            /** Clear height of the box where a full-width slot ends, the slot in it */
            chamberHeightMm?: number;
            /** Equal ports */
            count?: number;
            /** Radius to which the board across from its wall is rounded at both mouths, part of the length */
            flareRadiusMm?: number;
            /** Clear height */
            heightMm?: number;
            /**
             * Shape (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "slot";
            /** Physical length, to learn the tuning of a port given whole */
            lengthMm?: number;
            /** `own` walls all round, `one-shared` with the box, or `full-width` */
            walls?: components["schemas"]["SlotWalls"];
            /** Clear width of one */
            widthMm: number;
        };
        /**
         * Which walls a slot has of its own.
         * @enum {string}
         */
        SlotWalls: "own" | "one-shared" | "full-width";
        SoldAs: {
            item?: string;
            quantity: number;
            unit: string;
        };
        /** What feeds the drivers */
        Source: {
            /** Load at which the power is meant */
            loadOhm?: number;
            /** In place of the voltage */
            powerW?: number;
            /** Resistance of amplifier and cable before the drivers */
            seriesOhm?: number;
            /** RMS voltage over the whole group of drivers, before the series resistance */
            voltageV?: number;
        };
        /** Id of a source */
        SourceId: string;
        /** See /v1/reference/sources */
        SourceIdList: components["schemas"]["SourceId"][];
        SourceRow: {
            id: string;
            /** @enum {string} */
            status: "read" | "second-hand" | "from memory" | "derived" | "practice" | "ours";
            title: string;
        };
        SourcesTable: {
            description: string;
            rows: components["schemas"]["SourceRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        SpaceCost: {
            roughOuterL: number;
            timesSmallest: number;
        };
        SpeakerCable: {
            ampacityA?: number;
            areaMm2: number;
            currentA: number;
            dampingFactor?: number;
            designation: string;
            /** @enum {string} */
            fails?: "resistance" | "ampacity";
            /** @enum {string} */
            governedBy?: "resistance" | "ampacity" | "smallest-size";
            loopOhm: number;
            lossDb: number;
            qes?: number;
            qesFactor?: number;
            resistancePercent: number;
            sourceSeriesOhm: number;
        };
        SpeakerCableCandidate: {
            ampacityA?: number;
            designation: string;
            /** @enum {string} */
            fails?: "resistance" | "ampacity";
            loopOhm: number;
            resistancePercent: number;
        };
        /** The cable from an amplifier to its load. */
        SpeakerCableRequest: {
            /** Surroundings of the cable */
            ambientC?: number;
            /** Damping factor of the data sheet at this load */
            amplifierDampingFactor?: number;
            /** Metal of the conductor */
            conductor?: components["schemas"]["Conductor"];
            /** A size to be judged instead of chosen, with its series */
            designation?: string;
            /** Temperature class of the insulation */
            insulationC?: number;
            /** Way from the amplifier to the box */
            lengthM: number;
            /** Electrical Q of the drivers, needs reOhm */
            qes?: number;
            /** Direct-current resistance of the whole load, for the effect on Qes */
            reOhm?: number;
            /** Most of the load that may be in the wire */
            resistanceLimitPercent?: number;
            /** Resistance of the stranded over the solid conductor */
            strandingFactor?: number;
        };
        /** A loudspeaker output */
        SpeakerLevelSource: {
            /** Whether both wires rest at half the supply */
            bridgeTied?: boolean;
            /** The source is the vehicle's own and may equalise, delay and roll off */
            factory?: boolean;
            /**
             * Kind of source (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "speaker-level";
            /** Highest undistorted RMS output */
            levelV?: number;
            /** Loudspeaker it is rated for */
            loadOhm?: number;
            /** Continuous power of one output */
            powerW?: number;
        };
        SpeedSpread: {
            meanMPerS: number;
            nominalMPerS: number;
            percentilesMPerS: number[];
            standardDeviationMPerS: number;
        };
        /** One standard deviation of each physical parameter */
        Spread: {
            /** One standard deviation of the force factor */
            blPercent?: number;
            /** One standard deviation of the compliance of the suspension */
            cmsPercent?: number;
            /** One standard deviation of the inductance of the coil */
            lePercent?: number;
            /** One standard deviation of the loss Qs of each chamber */
            lossPercent?: number;
            /** One standard deviation of the moving mass */
            mmsPercent?: number;
            /** One standard deviation of the area of the ports */
            portAreaPercent?: number;
            /** One standard deviation of the length of the ports */
            portLengthPercent?: number;
            /** One standard deviation of their compliance */
            radiatorCompliancePercent?: number;
            /** One standard deviation of the mass of the passive radiators */
            radiatorMassPercent?: number;
            /** One standard deviation of the DC resistance of the coil */
            rePercent?: number;
            /** One standard deviation of the mechanical resistance */
            rmsPercent?: number;
            /** One standard deviation of the area of the cone */
            sdPercent?: number;
            /** One standard deviation of the air temperature */
            temperatureK?: number;
            /** One standard deviation of the volume of each chamber */
            volumePercent?: number;
        };
        StageParts: {
            chassis: number;
            fuse: number;
            joints: number;
            other: number;
            positive: number;
            return: number;
        };
        StageResult: {
            ampacityA?: number;
            conductorC?: number;
            currentA?: number;
            dropV?: number;
            fuseRatingA?: number;
            lossW?: number;
            parts: components["schemas"]["StageParts"];
            resistanceOhm: number;
        };
        StepLine: {
            number: number;
            title: string;
        };
        SuitedDriver: {
            figures: components["schemas"]["SystemFigures"];
            fsHz: number;
            qts: number;
            vasL: number;
        };
        /** An amplifier as the supply sees it */
        SupplyAmplifier: {
            /** Class of the output stage */
            class?: components["schemas"]["AmplifierClass"];
            /** Output over input at rated output, from the data sheet */
            efficiency?: number;
            /** Input current at rated output, from the data sheet */
            inputCurrentA?: number;
            /** Supply voltage of that input current */
            inputVoltageV?: number;
            /** Load wired to it */
            loadOhm?: number;
            /** Name for the answer */
            name?: string;
            /** Ratings of the fuses on the amplifier */
            onboardFusesA?: number[];
            /** Continuous RMS output of all driven channels into the wired load */
            powerW?: number;
            /** Draw at silence, switched on */
            quiescentW?: number;
            /** What the power stands for */
            ratedAs?: components["schemas"]["RatedPower"];
            /** Supply voltage of the power rating */
            ratedVoltageV?: number;
            /** Published outputs by load */
            ratings?: components["schemas"]["AmplifierLoadRating"][];
            /**
             * Whether the output holds when the supply falls
             * @enum {string}
             */
            regulation?: "regulated" | "unregulated";
            /** Draw when switched off */
            standbyA?: number;
        };
        /** Amplifiers on one supply. */
        SupplyCurrentRequest: {
            /** Amplifiers fed from this supply */
            amplifiers: components["schemas"]["SupplyAmplifier"][];
            battery?: components["schemas"]["BatteryRequest"];
            capacitor?: components["schemas"]["CapacitorRequest"];
            charging?: components["schemas"]["ChargingRequest"];
            converter?: components["schemas"]["ConverterRequest"];
            /** What drives the vehicle */
            drive?: components["schemas"]["VehicleDrive"];
            secondBattery?: components["schemas"]["SecondBatteryRequest"];
            /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58) */
            systemVoltageV: number;
        };
        SupplyCurrentResult: {
            amplifiers: components["schemas"]["AmplifierCurrents"][];
            capacitor?: components["schemas"]["CapacitorEffect"];
            charging?: components["schemas"]["ChargingBalance"];
            converter?: components["schemas"]["ConverterLoad"];
            currents: components["schemas"]["SupplyCurrents"];
            engineOff?: components["schemas"]["EngineOff"];
            sizing: components["schemas"]["SizingCurrents"];
        };
        SupplyCurrents: {
            averageA: number;
            fullSineA: number;
            heavyA: number;
            peakNoStorageA: number;
            quiescentA: number;
            rippleRmsA: number;
        };
        SupplyPatch: {
            charging?: {
                ratedA: number;
            };
            conductor?: components["schemas"]["Conductor"];
            converter?: {
                ratedA?: number;
            };
            dropLimitPercent?: number;
            insulationC?: number;
            insulationMaterial?: components["schemas"]["InsulationMaterial"];
            return?: components["schemas"]["ReturnPatch"];
            runs?: number;
            secondBattery?: components["schemas"]["SecondBatteryPatch"];
        };
        SystemFigures: {
            airSpeedMPerS?: number;
            f3Hz?: number;
            frontVolumeL?: number;
            gainPowerW: number;
            groupDelayMs: number;
            /** @enum {string} */
            heardAt: "seat" | "half-space";
            kind: components["schemas"]["BoxKind"];
            levelDb: number[];
            massKg: number;
            netVolumeL: number;
            outerVolumeL: number;
            price?: number;
            tuningHz?: number;
        };
        /** The cup for the wires */
        TerminalCup: {
            centre?: components["schemas"]["PlaceOnPanel"];
            /** Of a round cut-out */
            cutOutDiameterMm?: number;
            /** Of a rectangular cut-out */
            cutOutHeightMm?: number;
            /** Of a rectangular cut-out */
            cutOutWidthMm?: number;
            /** Face that carries it */
            face?: components["schemas"]["FaceName"];
            /** Behind the inner face of its panel */
            volumeL?: number;
        };
        TerminalRow: {
            /** @enum {string} */
            knownFrom: "reprint" | "memory";
            meaning: string;
            standard: string;
            terminal: string;
        };
        TerminalsTable: {
            description: string;
            rows: components["schemas"]["TerminalRow"][];
            sources: components["schemas"]["SourceId"][];
        };
        /** The test tone and what is allowed past it. */
        TestTone: {
            /** Boost that is switched on after the setting */
            boostDb?: number;
            /** Frequency of the tone */
            frequencyHz?: number;
            /** Level of the tone against full scale */
            levelDb?: number;
            /** Allowance for quiet recordings */
            quietRecordingDb?: number;
        };
        TimeResponse: {
            impulsePerS: number[];
            jumpRatio: number;
            overshootRatio: number;
            peakRatio: number;
            peakTimeMs: number;
            settlingTimeMs?: number;
            stepRatio: number[];
            timeMs: number[];
        };
        /** Asks for the step and impulse response. */
        TimeResponseRequest: {
            /** How long to follow it */
            durationMs?: number;
            /** Moments, equally spaced, the first at zero */
            points?: number;
        };
        ToleranceBand: {
            coneExcursionMm: number[];
            impedanceOhm: number[];
            levelDb: number[];
            percent: number;
        };
        ToleranceFigures: {
            closedResonance?: components["schemas"]["FrequencySpread"];
            driverResonance?: components["schemas"]["FrequencySpread"];
            driverTotalQ?: components["schemas"]["PureSpread"];
            f3?: components["schemas"]["FrequencySpread"];
            f3Upper?: components["schemas"]["FrequencySpread"];
            frontTuning?: components["schemas"]["FrequencySpread"];
            minimumImpedance?: components["schemas"]["ResistanceSpread"];
            peakAirSpeed?: components["schemas"]["SpeedSpread"];
            peakExcursion?: components["schemas"]["TravelSpread"];
            tuning?: components["schemas"]["FrequencySpread"];
        };
        /** The test tone the gain is set with. */
        ToneLevel: {
            /** Level of the tone against full scale */
            levelDb?: number;
            /** Allowance for quiet recordings */
            quietRecordingDb?: number;
        };
        TravelSpread: {
            meanMm: number;
            nominalMm: number;
            percentilesMm: number[];
            standardDeviationMm: number;
        };
        /** A system that was built in figures */
        TriedSystem: {
            /** Name of the amplifier */
            amplifier: string;
            /** Places in the cautions of the part */
            cautions: number[];
            /** Name of the driver */
            driver: string;
            /** Drivers */
            driverCount: number;
            enclosure?: components["schemas"]["PlanEnclosure"];
            figures?: components["schemas"]["DesignFigures"];
            /** By which it was taken in turn */
            foreseen: components["schemas"]["ForeseenFigures"];
            /** Kind of box */
            kind: components["schemas"]["SearchedKind"];
            /** Why it is no design */
            rejection?: components["schemas"]["RejectedDesign"];
        };
        TurnOn: {
            limitA?: number;
            loadA: number;
            /** @enum {string} */
            method: "remote-line" | "relay" | "signal-sensing" | "accessory-relay";
            relay?: components["schemas"]["TurnOnRelay"];
            why: string;
        };
        TurnOnRelay: {
            coilCurrentA: number;
            fuseA: number;
            terminals: components["schemas"]["RelayTerminal"][];
        };
        /** How the amplifier can be switched on. */
        TurnOnRequest: {
            /** Whether the amplifier can switch itself on by its signal */
            amplifierSenses?: boolean;
            /** What that output may deliver */
            limitA?: number;
            /** Turn-on currents of all amplifiers and accessories */
            loadsA?: number[];
            /** Coil of the relay */
            relayCoilOhm?: number;
            /** Whether the source has a switched 12 V output */
            remoteOutput: boolean;
            /** Highest voltage with the engine running */
            systemVoltageV?: number;
        };
        TypicalDriver: {
            cutOutDiameterMm: number;
            flangeDiameterMm: number;
            leMh: number;
            mountingDepthMm: number;
            powerW: number;
            qms: number;
            ratedOhm: number;
            reOhm: number;
            sdCm2: number;
            xmaxMm: number;
        };
        /** A system of which no other is foreseen to be as good in every figure. */
        UnbeatenSystem: {
            /** Name of the amplifier */
            amplifier: string;
            /** Name of the driver */
            driver: string;
            /** Drivers */
            driverCount: number;
            figures: components["schemas"]["ForeseenFigures"];
            /** Kind of box */
            kind: components["schemas"]["SearchedKind"];
        };
        UnitSlip: {
            detail: string;
            id: string;
            mended: components["schemas"]["MendedParameter"];
        };
        UnsuitedAlignment: {
            alignment?: components["schemas"]["AlignmentId"];
            kind: components["schemas"]["EnclosureKind"];
            why: string;
        };
        UpsizedCable: {
            designation: string;
            fuseRatingA: number;
        };
        /**
         * The air that a volume of compliance was stated for.
         * @enum {string}
         */
        VasAir: "reference" | "request";
        /**
         * What drives the vehicle.
         * @enum {string}
         */
        VehicleDrive: "combustion" | "mild-hybrid" | "hybrid" | "electric";
        /** One chamber behind the cone with ports to the outside. */
        VentedBox: {
            /**
             * Kind of the enclosure (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            kind: "vented";
            rear: components["schemas"]["VentedChamber"];
        };
        /** A chamber with ports. */
        VentedChamber: {
            /** Q of the absorption at the frequency of the chamber */
            absorptionQ?: number;
            /** Q of the leak to the outside at the frequency of the chamber */
            leakQ?: number;
            /** Acoustic volume for all drivers together */
            netVolumeL: number;
            port: components["schemas"]["Port"];
        };
        VersionChanges: {
            moved: components["schemas"]["MovedFigures"][];
            version: string;
        };
        VolumeBalance: {
            boardL: number;
            displaced: components["schemas"]["Displaced"];
            errorPercent?: number;
            externalL: number;
            grossL: number;
            netL: number;
            recessL: number;
            rows: components["schemas"]["VolumeRow"][];
            targetL?: number;
        };
        VolumeRow: {
            how: string;
            /** @enum {string} */
            item: "drivers" | "ports" | "braces" | "amplifier" | "terminal" | "lining" | "baffleRings" | "cleats" | "divider" | "other";
            /** @enum {string} */
            known: "given" | "computed" | "estimated";
            volumeL: number;
        };
        WaitingPart: {
            /** @enum {boolean} */
            done: false;
            problem: components["schemas"]["Problem"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "waiting";
        };
        WarmingMoment: {
            coilC: number;
            compressionDb: number;
            reOhm: number;
            timeS: number;
        };
        WayOutPatch: {
            car?: components["schemas"]["PlanCarPatch"];
            driver?: components["schemas"]["PlanFacePatch"];
            driverCount?: number;
            enclosure?: null;
            finish?: components["schemas"]["PlanFinishPatch"];
        };
        WhatIfRow: {
            againstPlanDb: number;
            airSpeedMPerS?: number;
            /** @enum {string} */
            change: "none" | "volume" | "tuning" | "port-length" | "port-area" | "power";
            coneOfXmax?: number;
            f3Hz?: number;
            factor: number;
            heldPowerW: number;
            levelDb: number[];
            netVolumeL: number;
            tuningHz?: number;
        };
        WireCoilsAnswer: {
            assumed: components["schemas"]["AssumedList"];
            basis?: components["schemas"]["BasisList"];
            calculation: components["schemas"]["Calculation"];
            cautions: components["schemas"]["CautionList"];
            result: components["schemas"]["CoilWiringResult"];
            sources: components["schemas"]["SourceIdList"];
        };
        WireCoilsDone: {
            answer: components["schemas"]["WireCoilsAnswer"];
            /** @enum {boolean} */
            done: true;
            request: components["schemas"]["CoilWiringRequest"];
            resource: string;
            /**
             * discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            status: "done";
        };
        /** What /v1/coils/wiring gives, or why not. */
        WireCoilsPart: components["schemas"]["WireCoilsDone"] | components["schemas"]["FailedPart"] | components["schemas"]["WaitingPart"];
        WorkDay: {
            day: number;
            minutes: number;
            steps: string[];
        };
    };
    responses: {
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
        NothingToRefuse: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                "X-Request-Id": components["headers"]["X-Request-Id"];
                [name: string]: unknown;
            };
            content?: never;
        };
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
        /** Density [kg/m³] */
        AirDensityKgPerM3: number;
        /** Static pressure [Pa] */
        AirPressurePa: number;
        /** Speed of sound [m/s] */
        AirSoundSpeedMPerS: number;
        /** Air temperature [°C] */
        AirTemperatureC: number;
        /** `true` adds how each figure was reached */
        Basis: boolean;
        /** Surroundings of the cable [°C] */
        CableAmbientC: number;
        /** Damping factor of the data sheet at this load [1] */
        CableAmplifierDampingFactor: number;
        /** Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
        CableConductor: components["schemas"]["Conductor"];
        /** A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
        CableDesignation: string;
        /** Temperature class of the insulation [°C] */
        CableInsulationC: number;
        /** Way from the amplifier to the box; both conductors are counted [m] */
        CableLengthM: number;
        /** Electrical Q of the drivers, needs reOhm [1] */
        CableQes: number;
        /** Direct-current resistance of the whole load, for the effect on Qes [Ω] */
        CableReOhm: number;
        /** Most of the load that may be in the wire [%] */
        CableResistanceLimitPercent: number;
        /** Resistance of the stranded over the solid conductor [1] */
        CableStrandingFactor: number;
        /** Code of the entry */
        Code: string;
        /** Test tones or sustained notes: the fuse is held to the full sine for good */
        ContinuousTone: boolean;
        /** `six` significant digits (the default) or `full` precision */
        Digits: "six" | "full";
        /** Drivers */
        DriverCount: number;
        /** Continuous power rating [W] */
        DriverPowerW: number;
        /** Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
        DriverVasAir: components["schemas"]["VasAir"];
        /** Linear excursion, one way, peak [mm] */
        DriverXmaxMm: number;
        /** Form of the answer, for who cannot set Accept; stands before it */
        Form: "json" | "csv";
        /** Surroundings of the fuse [°C] */
        FuseAmbientC: number;
        /** Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
        HeavyCurrentA: number;
        /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
        Language: "en" | "en-US" | "de";
        /** Continuous load over fuse rating [1] */
        LoadRatio: number;
        /** External fuse the amplifier’s maker states [A] */
        MakerFuseA: number;
        /** `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
        Policy: components["schemas"]["FusePolicy"];
        /** Capacity of the bank at 20 h [A·h] */
        SourceCapacityAh: number;
        /** Kind of battery; with capacityAh in place of the cold cranking current */
        SourceChemistry: components["schemas"]["BatteryChemistry"];
        /** Cold cranking current, from which both ends of the resistance follow [A] */
        SourceColdCrankingA: number;
        /** Open-circuit voltage of the battery [V] */
        SourceOpenCircuitV: number;
        /** Internal resistance of the battery [Ω] */
        SourceResistanceOhm: number;
        /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
        SystemVoltageV: number;
        /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
        Validate: "only";
    };
    requestBodies: never;
    headers: {
        "Cache-Control": string;
        ETag: string;
        RateLimit: string;
        "RateLimit-Policy": string;
        "Retry-After": number;
        "WWW-Authenticate": string;
        "X-Request-Id": string;
    };
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    matchAmplifierByQuery: {
        parameters: {
            query: {
                "amplifier.channels"?: number;
                "amplifier.class"?: components["schemas"]["AmplifierClass"];
                "amplifier.efficiency"?: number;
                "amplifier.footprintCm2"?: number;
                "amplifier.minimumBridgedOhm"?: number;
                "amplifier.minimumOhm": number;
                "amplifier.name"?: string;
                "amplifier.onboardFusesA.0"?: number;
                "amplifier.price"?: number;
                "amplifier.quiescentW"?: number;
                "amplifier.ratedVoltageV"?: number;
                "amplifier.ratingKind"?: components["schemas"]["RatingKind"];
                "amplifier.ratings.0.bridged"?: boolean;
                "amplifier.ratings.0.loadOhm": number;
                "amplifier.ratings.0.powerW": number;
                amplifierCount?: number;
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** Surroundings of the cable [°C] */
                "cable.ambientC"?: components["parameters"]["CableAmbientC"];
                /** Damping factor of the data sheet at this load [1] */
                "cable.amplifierDampingFactor"?: components["parameters"]["CableAmplifierDampingFactor"];
                /** Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
                "cable.conductor"?: components["parameters"]["CableConductor"];
                /** A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
                "cable.designation"?: components["parameters"]["CableDesignation"];
                /** Temperature class of the insulation [°C] */
                "cable.insulationC"?: components["parameters"]["CableInsulationC"];
                /** Way from the amplifier to the box; both conductors are counted [m] */
                "cable.lengthM"?: components["parameters"]["CableLengthM"];
                /** Electrical Q of the drivers, needs reOhm [1] */
                "cable.qes"?: components["parameters"]["CableQes"];
                /** Direct-current resistance of the whole load, for the effect on Qes [Ω] */
                "cable.reOhm"?: components["parameters"]["CableReOhm"];
                /** Most of the load that may be in the wire [%] */
                "cable.resistanceLimitPercent"?: components["parameters"]["CableResistanceLimitPercent"];
                /** Resistance of the stranded over the solid conductor [1] */
                "cable.strandingFactor"?: components["parameters"]["CableStrandingFactor"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                "driver.coilOhm": number;
                "driver.coils": number;
                "driver.powerW": number;
                "driver.ratingKind"?: components["schemas"]["RatingKind"];
                /** Drivers */
                driverCount: components["parameters"]["DriverCount"];
                gainPowerW?: number;
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                "otherAmplifiers.0.channels"?: number;
                "otherAmplifiers.0.class"?: components["schemas"]["AmplifierClass"];
                "otherAmplifiers.0.efficiency"?: number;
                "otherAmplifiers.0.footprintCm2"?: number;
                "otherAmplifiers.0.minimumBridgedOhm"?: number;
                "otherAmplifiers.0.minimumOhm"?: number;
                "otherAmplifiers.0.name"?: string;
                "otherAmplifiers.0.onboardFusesA.0"?: number;
                "otherAmplifiers.0.price"?: number;
                "otherAmplifiers.0.quiescentW"?: number;
                "otherAmplifiers.0.ratedVoltageV"?: number;
                "otherAmplifiers.0.ratingKind"?: components["schemas"]["RatingKind"];
                "otherAmplifiers.0.ratings.0.bridged"?: boolean;
                "otherAmplifiers.0.ratings.0.loadOhm"?: number;
                "otherAmplifiers.0.ratings.0.powerW"?: number;
                rankBy?: "power" | "price" | "size";
                "tone.levelDb"?: number;
                "tone.quietRecordingDb"?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "ndjson";
                fromIndex?: string;
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "svg" | "dxf" | "pdf";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "gltf";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Form of the answer, for who cannot set Accept; stands before it */
                form?: components["parameters"]["Form"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Form of the answer, for who cannot set Accept; stands before it */
                form?: components["parameters"]["Form"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** Code of the entry */
                code: components["parameters"]["Code"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** Surroundings of the cable [°C] */
                "cable.ambientC"?: components["parameters"]["CableAmbientC"];
                /** Damping factor of the data sheet at this load [1] */
                "cable.amplifierDampingFactor"?: components["parameters"]["CableAmplifierDampingFactor"];
                /** Metal of the conductor; "unknown" is computed as 10 % clad aluminium */
                "cable.conductor"?: components["parameters"]["CableConductor"];
                /** A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2" */
                "cable.designation"?: components["parameters"]["CableDesignation"];
                /** Temperature class of the insulation [°C] */
                "cable.insulationC"?: components["parameters"]["CableInsulationC"];
                /** Way from the amplifier to the box; both conductors are counted [m] */
                "cable.lengthM"?: components["parameters"]["CableLengthM"];
                /** Electrical Q of the drivers, needs reOhm [1] */
                "cable.qes"?: components["parameters"]["CableQes"];
                /** Direct-current resistance of the whole load, for the effect on Qes [Ω] */
                "cable.reOhm"?: components["parameters"]["CableReOhm"];
                /** Most of the load that may be in the wire [%] */
                "cable.resistanceLimitPercent"?: components["parameters"]["CableResistanceLimitPercent"];
                /** Resistance of the stranded over the solid conductor [1] */
                "cable.strandingFactor"?: components["parameters"]["CableStrandingFactor"];
                channelMinimumOhm?: number;
                coilOhm?: number;
                coilReOhm?: number;
                "coilsOhm.0"?: number;
                coilsPerDriver: number;
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Drivers */
                driverCount: components["parameters"]["DriverCount"];
                form?: "json" | "svg";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                minimumOhm?: number;
                targetOhm?: number;
                totalPowerW?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "svg";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
    compareDesigns: {
        parameters: {
            query?: {
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "svg" | "html";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignComparison"];
            };
        };
        responses: {
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompareDesignsAnswer"];
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
    regionOfDrivers: {
        parameters: {
            query?: {
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "html" | "text";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DriverRegionRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegionOfDriversAnswer"];
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
    mergeDesigns: {
        parameters: {
            query?: {
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignMergeRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    "X-Request-Id": components["headers"]["X-Request-Id"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MergeDesignsAnswer"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "ndjson";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** Density [kg/m³] */
                "air.densityKgPerM3"?: components["parameters"]["AirDensityKgPerM3"];
                /** Static pressure [Pa] */
                "air.pressurePa"?: components["parameters"]["AirPressurePa"];
                /** Speed of sound [m/s] */
                "air.soundSpeedMPerS"?: components["parameters"]["AirSoundSpeedMPerS"];
                /** Air temperature [°C] */
                "air.temperatureC"?: components["parameters"]["AirTemperatureC"];
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                "coils.count"?: 1 | 2 | 4;
                "coils.resistanceStatedFor"?: components["schemas"]["CoilConnection"];
                "coils.statedFor"?: components["schemas"]["CoilConnection"];
                "coils.wanted"?: components["schemas"]["CoilConnection"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                "driver.blTm"?: number;
                "driver.cmsMmPerN"?: number;
                "driver.fsHz"?: number;
                "driver.leMh"?: number;
                "driver.leParallelOhm"?: number;
                "driver.level1WDb"?: number;
                "driver.level2V83Db"?: number;
                "driver.mmdG"?: number;
                "driver.mmsG"?: number;
                "driver.nominalDiameterMm"?: number;
                /** Continuous power rating [W] */
                "driver.powerW"?: components["parameters"]["DriverPowerW"];
                "driver.qes"?: number;
                "driver.qms"?: number;
                "driver.qts"?: number;
                "driver.ratedImpedanceOhm"?: number;
                "driver.reOhm"?: number;
                "driver.rmsKgPerS"?: number;
                "driver.sdCm2"?: number;
                /** Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
                "driver.vasAir"?: components["parameters"]["DriverVasAir"];
                "driver.vasL"?: number;
                /** Linear excursion, one way, peak [mm] */
                "driver.xmaxMm"?: components["parameters"]["DriverXmaxMm"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "csv" | "svg";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Form of the answer, for who cannot set Accept; stands before it */
                form?: components["parameters"]["Form"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                form?: "json" | "compact" | "html" | "pdf" | "csv" | "text" | "markdown" | "gltf";
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                parts?: string;
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** Density [kg/m³] */
                "air.densityKgPerM3"?: components["parameters"]["AirDensityKgPerM3"];
                /** Static pressure [Pa] */
                "air.pressurePa"?: components["parameters"]["AirPressurePa"];
                /** Speed of sound [m/s] */
                "air.soundSpeedMPerS"?: components["parameters"]["AirSoundSpeedMPerS"];
                /** Air temperature [°C] */
                "air.temperatureC"?: components["parameters"]["AirTemperatureC"];
                airSpeedLimitMPerS?: number;
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                bends?: number;
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                "driver.blTm"?: number;
                "driver.cmsMmPerN"?: number;
                "driver.fsHz"?: number;
                "driver.le2Mh"?: number;
                "driver.le2ParallelOhm"?: number;
                "driver.leExponent"?: number;
                "driver.leFactor"?: number;
                "driver.leMh"?: number;
                "driver.leParallelOhm"?: number;
                "driver.mmsG"?: number;
                /** Continuous power rating [W] */
                "driver.powerW"?: components["parameters"]["DriverPowerW"];
                "driver.qes"?: number;
                "driver.qms"?: number;
                "driver.qts"?: number;
                "driver.reOhm"?: number;
                "driver.rmsKgPerS"?: number;
                "driver.sdCm2"?: number;
                /** Air that Vas is stated for: `reference`, dry air at 20 °C and 101 325 Pa, or that of the `request`. When absent: that of the request where its density and speed of sound are stated, else the reference */
                "driver.vasAir"?: components["parameters"]["DriverVasAir"];
                "driver.vasL"?: number;
                /** Linear excursion, one way, peak [mm] */
                "driver.xmaxMm"?: components["parameters"]["DriverXmaxMm"];
                "drivers.count"?: number;
                "drivers.inSeries"?: number;
                "drivers.isobaric.connection"?: "parallel" | "series";
                "drivers.isobaric.couplingVolumeL"?: number;
                endModel?: components["schemas"]["PortEndModel"];
                "ends.inner"?: components["schemas"]["PortEndSituation"];
                "ends.outer"?: components["schemas"]["PortEndSituation"];
                "filters.0.centreHz"?: number;
                "filters.0.cornerHz"?: number;
                "filters.0.family"?: components["schemas"]["FilterFamily"];
                "filters.0.gainDb"?: number;
                "filters.0.kind"?: "high-pass" | "low-pass" | "low-shelf" | "high-shelf" | "peaking";
                "filters.0.order"?: number;
                "filters.0.q"?: number;
                highPassHz?: number;
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                leakQ?: number;
                lowPassHz?: number;
                mouth?: components["schemas"]["PortMouth"];
                netVolumeL: number;
                peakFlowM3PerS?: number;
                "port.chamberHeightMm"?: number;
                "port.count"?: number;
                "port.diameterMm"?: number;
                "port.flareRadiusMm"?: number;
                "port.heightMm"?: number;
                "port.kind"?: components["schemas"]["PortShape"];
                "port.lengthMm"?: number;
                "port.walls"?: components["schemas"]["SlotWalls"];
                "port.widthMm"?: number;
                rearVolumeL?: number;
                "source.loadOhm"?: number;
                "source.powerW"?: number;
                "source.seriesOhm"?: number;
                "source.voltageV"?: number;
                "space.bentMm"?: number;
                "space.straightMm"?: number;
                sweptVolumeL?: number;
                tuningHz?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** Code of the entry */
                code: components["parameters"]["Code"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                name: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                ambientC?: number;
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                bundledConductors?: number;
                "checks.0"?: components["schemas"]["CableLimit"];
                conductor?: components["schemas"]["Conductor"];
                conductorTemperatureC?: number;
                contactOhm?: number;
                /** Test tones or sustained notes: the fuse is held to the full sine for good */
                continuousTone?: components["parameters"]["ContinuousTone"];
                currentA?: number;
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                dropLimitPercent?: number;
                dropLimitV?: number;
                dropOutV?: number;
                fuseA?: number;
                /** Surroundings of the fuse [°C] */
                fuseAmbientC?: components["parameters"]["FuseAmbientC"];
                "fuseTypes.0"?: components["schemas"]["FuseType"];
                futureLoadPowerW?: number;
                gaugeSystem?: components["schemas"]["GaugeSystem"];
                /** Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
                heavyCurrentA?: components["parameters"]["HeavyCurrentA"];
                insulationC?: number;
                insulationMaterial?: components["schemas"]["InsulationMaterial"];
                jointOhm?: number;
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                loadModel?: "constant-current" | "constant-power";
                loadPowerW?: number;
                /** Continuous load over fuse rating [1] */
                loadRatio?: components["parameters"]["LoadRatio"];
                /** External fuse the amplifier’s maker states [A] */
                makerFuseA?: components["parameters"]["MakerFuseA"];
                metricResistance?: components["schemas"]["MetricResistance"];
                "onboardFusesA.0"?: number;
                /** `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
                policy?: components["parameters"]["Policy"];
                positiveLengthM: number;
                ratedVoltageV?: number;
                resistivityOhmM?: number;
                "return.body"?: components["schemas"]["ChassisBody"];
                "return.kind"?: "cable" | "chassis";
                "return.leadLengthM"?: number;
                "return.lengthM"?: number;
                "return.resistanceOhm"?: number;
                runs?: number;
                "shortCircuit.currentA"?: number;
                "shortCircuit.durationS"?: number;
                "shortCircuit.endC"?: number;
                "shortCircuit.heatCapacityJPerM3K"?: number;
                "shortCircuit.startC"?: number;
                "sizes.0"?: string;
                /** Capacity of the bank at 20 h [A·h] */
                "source.capacityAh"?: components["parameters"]["SourceCapacityAh"];
                /** Kind of battery; with capacityAh in place of the cold cranking current */
                "source.chemistry"?: components["parameters"]["SourceChemistry"];
                /** Cold cranking current, from which both ends of the resistance follow [A] */
                "source.coldCrankingA"?: components["parameters"]["SourceColdCrankingA"];
                /** Open-circuit voltage of the battery [V] */
                "source.openCircuitV"?: components["parameters"]["SourceOpenCircuitV"];
                /** Internal resistance of the battery [Ω] */
                "source.resistanceOhm"?: components["parameters"]["SourceResistanceOhm"];
                sourceVoltageV?: number;
                "spaces.0"?: components["schemas"]["RunSpace"];
                strandingFactor?: number;
                /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
                systemVoltageV: components["parameters"]["SystemVoltageV"];
                temperatureCoefficientPerK?: number;
                terminalAreaMm2?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                "amplifiers.0.class"?: components["schemas"]["AmplifierClass"];
                "amplifiers.0.efficiency"?: number;
                "amplifiers.0.inputCurrentA"?: number;
                "amplifiers.0.inputVoltageV"?: number;
                "amplifiers.0.loadOhm"?: number;
                "amplifiers.0.name"?: string;
                "amplifiers.0.onboardFusesA.0"?: number;
                "amplifiers.0.powerW"?: number;
                "amplifiers.0.quiescentW"?: number;
                "amplifiers.0.ratedAs"?: components["schemas"]["RatedPower"];
                "amplifiers.0.ratedVoltageV"?: number;
                "amplifiers.0.ratings.0.loadOhm"?: number;
                "amplifiers.0.ratings.0.powerW"?: number;
                "amplifiers.0.regulation"?: "regulated" | "unregulated";
                "amplifiers.0.standbyA"?: number;
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                "battery.capacityAh"?: number;
                "battery.chemistry"?: components["schemas"]["BatteryChemistry"];
                "battery.coldCrankingA"?: number;
                "battery.parkedLoadA"?: number;
                "battery.peukertExponent"?: number;
                "battery.ratedHours"?: number;
                "battery.reserveMinutes"?: number;
                "battery.resistanceOhm"?: number;
                "battery.usableFraction"?: number;
                "capacitor.capacitanceF"?: number;
                "capacitor.esrOhm"?: number;
                "capacitor.fromV"?: number;
                "capacitor.prechargeOhm"?: number;
                "capacitor.sourceOhm"?: number;
                "capacitor.toV"?: number;
                "charging.baseLoadA"?: number;
                "charging.drivingShaftPerMin"?: number;
                "charging.hotFactor"?: number;
                "charging.idleA"?: number;
                "charging.idleFraction"?: number;
                "charging.idleShaftPerMin"?: number;
                "charging.kind"?: "alternator" | "converter";
                "charging.ratedA"?: number;
                "converter.efficiency"?: number;
                "converter.highestInputV"?: number;
                "converter.lowestInputV"?: number;
                "converter.outputV"?: number;
                "converter.ratedA"?: number;
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                drive?: components["schemas"]["VehicleDrive"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                "secondBattery.arrangement"?: "isolated" | "parallel";
                "secondBattery.capacityAh"?: number;
                "secondBattery.chemistry"?: components["schemas"]["BatteryChemistry"];
                "secondBattery.coldCrankingA"?: number;
                "secondBattery.peukertExponent"?: number;
                "secondBattery.ratedHours"?: number;
                "secondBattery.reserveMinutes"?: number;
                "secondBattery.resistanceOhm"?: number;
                "secondBattery.usableFraction"?: number;
                /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
                systemVoltageV: components["parameters"]["SystemVoltageV"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
                "alsoProtects.0.ambientC"?: number;
                "alsoProtects.0.bundledConductors"?: number;
                "alsoProtects.0.conductor"?: components["schemas"]["Conductor"];
                "alsoProtects.0.designation"?: string;
                "alsoProtects.0.gaugeSystem"?: components["schemas"]["GaugeSystem"];
                "alsoProtects.0.insulationC"?: number;
                "alsoProtects.0.spaces.0"?: components["schemas"]["RunSpace"];
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                "branchFusesA.0"?: number;
                "cable.ambientC"?: number;
                "cable.bundledConductors"?: number;
                "cable.conductor"?: components["schemas"]["Conductor"];
                "cable.designation": string;
                "cable.gaugeSystem"?: components["schemas"]["GaugeSystem"];
                "cable.insulationC"?: number;
                "cable.spaces.0"?: components["schemas"]["RunSpace"];
                /** Test tones or sustained notes: the fuse is held to the full sine for good */
                continuousTone?: components["parameters"]["ContinuousTone"];
                currentA: number;
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                distanceMm?: number;
                /** Surroundings of the fuse [°C] */
                fuseAmbientC?: components["parameters"]["FuseAmbientC"];
                /** Current of dense bass music (1/3 of rated output), for the heating of the fuse [A] */
                heavyCurrentA?: components["parameters"]["HeavyCurrentA"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                linksTwoBatteries?: boolean;
                /** Continuous load over fuse rating [1] */
                loadRatio?: components["parameters"]["LoadRatio"];
                /** External fuse the amplifier’s maker states [A] */
                makerFuseA?: components["parameters"]["MakerFuseA"];
                "onboardFusesA.0"?: number;
                overcurrentA?: number;
                /** `strict`: rating at most the ampacity; `cfr-150`: at most 150 % of the table value under 50 V */
                policy?: components["parameters"]["Policy"];
                sheathed?: boolean;
                /** Capacity of the bank at 20 h [A·h] */
                "source.capacityAh"?: components["parameters"]["SourceCapacityAh"];
                /** Kind of battery; with capacityAh in place of the cold cranking current */
                "source.chemistry"?: components["parameters"]["SourceChemistry"];
                /** Cold cranking current, from which both ends of the resistance follow [A] */
                "source.coldCrankingA"?: components["parameters"]["SourceColdCrankingA"];
                "source.leadOhm"?: number;
                /** Open-circuit voltage of the battery [V] */
                "source.openCircuitV"?: components["parameters"]["SourceOpenCircuitV"];
                /** Internal resistance of the battery [Ω] */
                "source.resistanceOhm"?: components["parameters"]["SourceResistanceOhm"];
                /** Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage [V] */
                systemVoltageV: components["parameters"]["SystemVoltageV"];
                "types.0"?: components["schemas"]["FuseType"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
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
                /** `true` adds how each figure was reached */
                basis?: components["parameters"]["Basis"];
                /** `six` significant digits (the default) or `full` precision */
                digits?: components["parameters"]["Digits"];
                /** Language of what a person reads, for a link that is kept or printed; stands before Accept-Language */
                language?: components["parameters"]["Language"];
                /** `only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated */
                validate?: components["parameters"]["Validate"];
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
