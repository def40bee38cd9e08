// Made from openapi/v1.json by `npm run generate`. Never edit it by hand.

export interface paths {
    "/v1/audit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists what was done in the workspace, and with which key.
         * @description Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed. Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listAudit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/audit/refusals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Counts the requests with keys of the workspace that were turned away.
         * @description By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
         */
        get: operations["listRefusals"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/audit/refusals/without-key": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Counts the requests without a known key that were turned away.
         * @description Of the whole installation, because such a request belongs to no workspace. By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
         */
        get: operations["listRefusalsWithoutKey"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/bulk-density": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the bulk density of a product and how sure it is.
         * @description From weighings of a known volume, a filled tank, a test weight or a stated number: the density with its interval, in every unit, beside the published densities of its material. A density far from them is challenged, a measured one never replaced. With nothing but a reference it gives a published value to start from. On wish what a tank holds and how far that goes. Nothing is stored.
         */
        post: operations["evaluateBulkDensity"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/bulk-density/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the bulk density of a product and how sure it is, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateBulkDensityBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/catch-plan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Plans a catch test of one or several meters.
         * @description For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits, container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, the steps with their dependencies, and the cautions. Nothing is stored.
         */
        post: operations["planCatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/catch-plan/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Plans a catch test of one or several meters, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["planCatchBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/catch-test": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates a catch test.
         * @description From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has changed against the value in force, and what to do now. Nothing is stored; the same question always gets the same answer.
         */
        post: operations["evaluateCatchTest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/catch-test/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates a catch test, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         *     Questions can also come as a table (`text/csv`, RFC 4180, with a header) of one catch in each row. The column `test`
         *     names the test to which a row belongs; rows of a test stand together. Other columns are named by the members they give,
         *     `scale.accuracyClass`, those of a catch without more, `gross`. A quantity has its unit in the header, `gross [kg]`, or
         *     in each row in a column beside it, `gross unit`. What holds for the whole test stands in its first row; later rows leave
         *     it empty or repeat it. A column `note` and any whose name begins with `x-` are yours: they are given back with the answer, as
         *     is `meter`. Where the header has tabs, tabs separate the cells; where it has a semicolon, semicolons do, and numbers may
         *     have decimal commas; otherwise commas separate them and numbers have decimal points. Errors name row and
         *     column. Answers come as a table too when `Accept` asks for it: one row for each test, the unit of a quantity in a
         *     column beside it.
         */
        post: operations["evaluateCatchTestBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/catch-tests": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists catch tests.
         * @description By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listCatchTests"];
        put?: never;
        /**
         * Records a catch test.
         * @description Machine, product, lot, scale and plan come from their records, the repeatability, the day-to-day component, the error of the scale and the value in force from the history where it has them; the answer says what was used. The test is kept with its full question, so that it can be evaluated again at any time. A wrong test is superseded by another with a reason. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["recordCatchTest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/catch-tests/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a stored catch test.
         * @description As entered, as asked and as answered then, with what came to light since. Quantities come in other units on request; sentences stay as written.
         */
        get: operations["getCatchTest"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/catch-tests/{id}/recomputations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates a stored catch test again and says whether anything differs.
         * @description The stored question goes through the engine as it is now; every value is compared with the stored answer. Nothing is changed.
         */
        post: operations["recomputeCatchTest"];
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
         * Lists every stored change, in the order in which it was stored.
         * @description What was described, changed, recorded or superseded, whenever it happened: what was entered offline on Sunday and arrived on Tuesday stands at its place of Tuesday. Whoever reads on from the after of the last page sees each change once and misses none; wait=20s holds the request until there is one. Keys and workspaces are not listed. What was stored before the service kept this list stands at its beginning, in the order in which it was received, with the creation and the last change of what is described. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
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
    "/v1/codes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every code with its cause and what to do.
         * @description The stable codes of errors, refusals, findings, reasons and cautions, each with its cause, its remedy, and the statuses or severities that it comes with: for translations and for help inside a client. People read the same at `/reference/codes`. Within v1 codes are only added.
         */
        get: operations["listCodes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/containers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every container.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listContainers"];
        put?: never;
        /**
         * Creates a container.
         * @description Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createContainer"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/containers/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a container.
         * @description As entered, with its revision. If-None-Match with the ETag saves the transfer.
         */
        get: operations["getContainer"];
        /**
         * Describes a container anew, or retires it.
         * @description The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceContainer"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/distance-sensor": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates the runs of a distance sensor over a measured course.
         * @description From one or more runs: pulses per distance and the rolling circumference with their uncertainty, slip against reference runs, ground speed, the width that passes really cover, what wrong numbers in the controller do to the rate, and what to type in. Nothing is stored.
         */
        post: operations["evaluateDistanceSensor"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/distance-sensor/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates the runs of a distance sensor over a measured course, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateDistanceSensorBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/drive-wheel-turns": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the turns of a drive wheel for areas, and evaluates turn tests.
         * @description For ground-driven machines: how often to turn the drive wheel for an area, what has to fall meanwhile in all and from each outlet, the rate that turn tests give with its uncertainty, whether it is close enough to its target, a first correction of the setting, and outlets that differ from the others. Nothing is stored.
         */
        post: operations["evaluateDriveWheelTurns"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/drive-wheel-turns/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the turns of a drive wheel for areas, and evaluates turn tests, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateDriveWheelTurnsBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/element-fit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds which displacement per revolution a metering element needs, and which element at hand comes nearest.
         * @description The displacements with which the meter stays inside its speeds at every rate and ground speed, and the part of them that does so with the wanted probability, for density and fill efficiency are only roughly known. Where no displacement serves, the answer says what would: a narrower range of speeds or rates, or several elements. Elements at hand come best first. Where the mass per revolution of an element was measured, ask `meter-speed`. No verdict: only a catch test says what a meter delivers. Nothing is stored.
         */
        post: operations["evaluateElementFit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/element-fit/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds which displacement per revolution a metering element needs, and which element at hand comes nearest, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateElementFitBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists everything that happened.
         * @description By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists the keys of the workspace.
         * @description Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listKeys"];
        put?: never;
        /**
         * Makes a key for this workspace.
         * @description The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make another.
         */
        post: operations["createKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a key.
         * @description Everything but its text, which nobody keeps.
         */
        get: operations["getKey"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys/{id}/rotations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Makes a key that takes the place of another.
         * @description The new key has the name and the scopes of the old one, which goes on until the stated instant, so that every client can change over in between. The text of the new key is in the answer once and is stored nowhere.
         */
        post: operations["rotateKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys/{id}/revocations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Revokes a key.
         * @description It opens nothing from the next request on. A key stays revoked; to go on, make another.
         */
        post: operations["revokeKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/lots": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every lot of a product.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listLots"];
        put?: never;
        /**
         * Creates a lot of a product.
         * @description Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createLot"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/lots/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a lot of a product.
         * @description As entered, with its revision. If-None-Match with the ETag saves the transfer.
         */
        get: operations["getLot"];
        /**
         * Describes a lot of a product anew, or retires it.
         * @description The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceLot"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machines": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every machine with its meters.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listMachines"];
        put?: never;
        /**
         * Creates a machine with its meters.
         * @description Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createMachine"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machines/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a machine with its meters.
         * @description As entered, with its revision. If-None-Match with the ETag saves the transfer.
         */
        get: operations["getMachine"];
        /**
         * Describes a machine with its meters anew, or retires it.
         * @description The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceMachine"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/meter-speed": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds meter speeds, windows and the best metering element.
         * @description For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which each rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its limits. Elements come best first. Nothing is stored.
         */
        post: operations["evaluateMeterSpeed"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/meter-speed/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds meter speeds, windows and the best metering element, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateMeterSpeedBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/new-lot": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds what a new lot or treatment changes, and whether to test.
         * @description The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities; whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density is unknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot, treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
         */
        post: operations["evaluateNewLot"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/new-lot/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds what a new lot or treatment changes, and whether to test, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateNewLotBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/catch-plan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Computes the catch plan of a stored plan.
         * @description Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, from the plan's start value where none is, else from the volume of the element and the bulk density. Computed anew with each call; nothing is stored.
         */
        get: operations["planCatchOfPlan"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/set-up": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Computes rates and set-up of a stored plan.
         * @description One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each element reaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against published limits; and what a new lot means for the value in force. What cannot be computed yet is listed under missing, with what to add; the rest is answered all the same. Computed anew with each call; nothing is stored.
         */
        get: operations["setUpOfPlan"];
        put?: never;
        post?: never;
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
        /**
         * Lists every plan for a field.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listPlans"];
        put?: never;
        /**
         * Creates a plan for a field.
         * @description Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createPlan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a plan for a field.
         * @description As entered, with its revision. If-None-Match with the ETag saves the transfer.
         */
        get: operations["getPlan"];
        /**
         * Describes a plan for a field anew, or retires it.
         * @description The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
         */
        put: operations["replacePlan"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/product-rate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the rates of products that supply the nutrients wanted.
         * @description The rates that meet every target at the least cost, or the least total mass where there are no prices, after credits and fixed rates are taken off: what each product supplies, what remains over, what it costs, packages over an area. Among equal costs the least mass is taken, then earlier products before later ones. Where the targets cannot be met, the nearest rates: limits (at-most, most) are kept as far as they can be, then the sum over all targets of what is missing, or for exact targets too much, each divided by its target, is least; findings say why. Nothing is stored.
         */
        post: operations["evaluateProductRate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/product-rate/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the rates of products that supply the nutrients wanted, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateProductRateBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/products": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every product.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listProducts"];
        put?: never;
        /**
         * Creates a product.
         * @description Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createProduct"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/products/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a product.
         * @description As entered, with its revision. If-None-Match with the ETag saves the transfer.
         */
        get: operations["getProduct"];
        /**
         * Describes a product anew, or retires it.
         * @description The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceProduct"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/scale-checks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists checks of scales.
         * @description By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listScaleChecks"];
        put?: never;
        /**
         * Records a check of a scale against known masses.
         * @description The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit. After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["recordScaleCheck"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/scale-checks/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a check of a scale.
         * @description As entered and as evaluated then.
         */
        get: operations["getScaleCheck"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/scales": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every scale.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listScales"];
        put?: never;
        /**
         * Creates a scale.
         * @description Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createScale"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/scales/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a scale.
         * @description As entered, with its revision. If-None-Match with the ETag saves the transfer.
         */
        get: operations["getScale"];
        /**
         * Describes a scale anew, or retires it.
         * @description The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceScale"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/seed-row-limit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Compares fertilizer placed with the seed with published limits.
         * @description The share of the seedbed that is used, the nutrients that lie with the seed in the worst zone, and every limit that is held for the crop and the region, with its source, year, place and conditions. A limit is used for its own crop, soil, moisture, opener and place only; where a source prints no number, there is none here. Where sources differ, all are shown and the stricter one leads. No answer says that a load is safe: local guidance, the product label and a licensed adviser go first. Nothing is stored.
         */
        post: operations["evaluateSeedRowLimit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/seed-row-limit/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Compares fertilizer placed with the seed with published limits, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateSeedRowLimitBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/seeding-rate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the seeding rate for a stand, or the stand of a rate.
         * @description From plants per area, seeds per area, seeds in a length of row, or a mass per area: all the others, with seeds per length of row, packages and cost. Units are exact; a rate made by dividing by 10 can be compared. What is unusual for the crop is said with the published range. Nothing is stored.
         */
        post: operations["evaluateSeedingRate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/seeding-rate/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the seeding rate for a stand, or the stand of a rate, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateSeedingRateBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/stand-count": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates a stand count.
         * @description From plants counted along rows, in frames or in hoops: plants per area with an interval that also holds for few and for clumped counts, how the counts scatter, how many of them a wanted precision takes, and which share of the seeds came up, with germination and without. Nothing is stored.
         */
        post: operations["evaluateStandCount"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/stand-count/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluates a stand count, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateStandCountBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/stand-risk": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the rate that reaches a minimum stand with a wanted probability.
         * @description Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has the rate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable the minimum stand is at a rate of your own. Nothing is stored.
         */
        post: operations["evaluateStandRisk"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/stand-risk/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds the rate that reaches a minimum stand with a wanted probability, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateStandRiskBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/units": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every unit with its exact factor.
         * @description The closed list of units that payloads take, by dimension, each with its exact factor to SI as a ratio of two whole numbers and its codes in UCUM, UN/ECE Recommendation 20 and AgGateway ADAPT where they have one.
         */
        get: operations["listUnits"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/adoptions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists adoptions.
         * @description By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listAdoptions"];
        put?: never;
        /**
         * Adopts a value.
         * @description From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. The number is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay on record. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["adoptValue"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/adoptions/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads an adoption.
         * @description As entered, with the mass per revolution that follows and with what came to light since.
         */
        get: operations["getAdoption"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machines/{id}/values-in-force": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists the values in force on a machine.
         * @description For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whom and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said, but the number stays in force until another is adopted, because the controller uses it until then. Page by page, at most 500 at once; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listValuesInForce"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/volume-check": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds what a metering element should deliver by its volume.
         * @description Displacement times bulk density times fill efficiency, with an interval; as a start value for a catch plan. A value measured or in force is compared with it: how far off it is, which fill efficiency it implies, and what may be wrong when that is more than the element holds. No verdict: only a catch test says what the meter delivers. Nothing is stored.
         */
        post: operations["evaluateVolumeCheck"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calculations/volume-check/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Finds what a metering element should deliver by its volume, for many questions at once.
         * @description One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
         *     with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
         *     line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
         *     line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
         *     some megabytes of answers are unread, no more questions are read. Nothing is stored.
         */
        post: operations["evaluateVolumeCheckBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/workspaces/{id}/keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Makes a key for a workspace, as its first one.
         * @description For whoever runs the installation. From then on the administrators of that workspace make their own keys. The audit of both workspaces tells of it.
         */
        post: operations["createKeyOfWorkspace"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/workspaces": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists the workspaces of the installation.
         * @description In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
         */
        get: operations["listWorkspaces"];
        put?: never;
        /**
         * Creates a workspace.
         * @description It has no keys yet; make its first one next. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
         */
        post: operations["createWorkspace"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/workspaces/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads a workspace.
         * @description If-None-Match with the ETag saves the transfer.
         */
        get: operations["getWorkspace"];
        /**
         * Renames a workspace, retires it or brings it back.
         * @description The keys of a retired workspace open nothing from the next request on; its records stay. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceWorkspace"];
        post?: never;
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
        /** @description A stored adoption. */
        AdoptionAnswer: {
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: date-time
             * @description When it was typed in, with the offset it was entered with.
             */
            occurredAt: string;
            /**
             * Format: date
             * @description The date of that in the machine's time zone.
             */
            localDate: string;
            /**
             * Format: date-time
             * @description When the service received it.
             */
            receivedAt: string;
            /** @description The value, and the gravest of what was noticed about it, in sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description The mass per revolution that the controller uses since then. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description The request exactly as entered. */
            entered: components["schemas"]["AdoptionRequest"];
            /** @description What was noticed. Codes known today: `adopted-despite`, `fits-other-product`, `adopted-otherwise`, `basis-superseded`, `scale-check-failed-later`, `more-than-the-element-holds`, `fill-unlike-expected`, `unlike-other-products`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description The record that took its place, with the reason; absent while it stands. */
            supersededBy?: components["schemas"]["Supersedes"];
        };
        /** @description A value that was typed into a controller: who, why, from which test or stated by hand. */
        AdoptionRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. */
            id?: string;
            /** @description Id of the machine. */
            machine: string;
            /** @description Position of the meter on the machine. */
            meter: string;
            /** @description Metering element fitted. */
            element: string;
            /** @description Setting of the meter; none when absent. */
            setting?: string;
            /** @description Id of the product. */
            product: string;
            /** @description Id of the lot in the tank. */
            lot?: string;
            /** @description Id of the catch test that the value rests on; absent when it is stated by hand. */
            test?: string;
            /** @description The number that was typed in, in the unit of the controller's form. */
            typedIn: components["schemas"]["TypedNumber"];
            /** @description The meter speed at which a mass per time applies; needed for that form only. No default. Range: above 0 and up to 10000 rpm. */
            meterSpeed?: components["schemas"]["RotationQuantity"];
            /** @description Why it was adopted. */
            reason: string;
            /** @description Why the number is right although something speaks against it: one answer for each code of the refusal, which names them all. Only after a request without it was refused; the record and every later answer show them. */
            despite?: components["schemas"]["Despite"][];
            /**
             * Format: date-time
             * @description When it was typed in, RFC 3339 with offset.
             */
            occurredAt: string;
            /** @description Who typed it in. */
            recordedBy: string;
            /** @description The wrong adoption that this one takes the place of. */
            supersedes?: components["schemas"]["Supersedes"];
        };
        /** @description How catches agree. */
        AgreementAnswer: {
            /** @description Standard deviation of the mass per revolution of the catches, relative; zero for one catch. */
            spread: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Sum of squared deviations over the variances expected of them.
             */
            q: number;
            /**
             * Format: double
             * @description How often chance alone gives at least this Q.
             */
            qProbability: number;
            /** @description No test speaks against the catches; all tests together err in 5 of 100 honest cases. */
            agree: boolean;
            /**
             * Format: double
             * @description Grubbs' statistic of the farthest catch, for information from six catches on.
             */
            grubbs?: number;
        };
        /** @description Air flows between which a product is carried and not damaged. */
        AirFlowLimits: {
            /** @description Least. No default. Range: above 0 and up to 1000000 m3/h. */
            minimum?: components["schemas"]["VolumePerTimeQuantity"];
            /** @description Most. No default. Range: above 0 and up to 1000000 m3/h. */
            maximum?: components["schemas"]["VolumePerTimeQuantity"];
        };
        /** @description The air flows that the limits of all products leave. */
        AirFlowWindow: {
            /** @description At least one air flow suits all products; when false, the minimum of one lies above the maximum of another. */
            exists: boolean;
            /** @description Least: the highest of the minima; absent without any. */
            minimum?: components["schemas"]["VolumePerTimeQuantity"];
            /** @description The product that sets it. */
            minimumOf?: string;
            /** @description Most: the lowest of the maxima; absent without any. */
            maximum?: components["schemas"]["VolumePerTimeQuantity"];
            /** @description The product that sets it. */
            maximumOf?: string;
        };
        /** @description What the air carries at one ground speed. */
        AirLoadAnswer: {
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /**
             * @description Which of its rates each product has: the `lowest` above zero or the `highest`.
             * @example lowest
             * @example highest
             */
            rates: string;
            /** @description Mass flow of all products together. */
            massFlow: components["schemas"]["MassPerTimeQuantity"];
            /** @description Mass of all products in a volume of air; absent without a planned air flow. */
            massPerAir?: components["schemas"]["BulkDensityQuantity"];
            /** @description Each product. */
            products: components["schemas"]["ProductLoadAnswer"][];
        };
        /** @description An amount of a nutrient per area. */
        AmountOfNutrient: {
            /**
             * @description The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4.
             * @enum {string}
             */
            nutrient: "N" | "P2O5" | "P" | "K2O" | "K" | "S" | "SO4-S" | "SO3" | "SO4";
            /** @description Amount per area. Range: 0 to 10000 kg/ha. */
            amount: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description A value of any dimension, in an answer. */
        AnyQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, one of those in `GET /v1/units`.
             * @example kg
             * @example g
             * @example t
             * @example lb
             * @example oz
             * @example ton-us
             * @example ton-uk
             * @example kg/ha
             * @example g/m2
             * @example lb/ac
             * @example /m2
             * @example /ha
             * @example /ft2
             * @example /ac
             * @example kg/rev
             * @example g/rev
             * @example lb/rev
             * @example oz/rev
             * @example rev
             * @example rpm
             * @example rev/s
             * @example km/h
             * @example m/s
             * @example mi/h
             * @example m
             * @example cm
             * @example mm
             * @example ft
             * @example in
             * @example ha
             * @example m2
             * @example ac
             * @example ft2
             * @example L
             * @example m3
             * @example bu-us
             * @example bu-imp
             * @example ft3
             * @example kg/hL
             * @example kg/m3
             * @example kg/L
             * @example lb/ft3
             * @example lb/bu-us
             * @example lb/bu-imp
             * @example g/1000
             * @example /kg
             * @example /lb
             * @example /m
             * @example /ft
             * @example s
             * @example min
             * @example h
             * @example kg/min
             * @example g/s
             * @example lb/min
             * @example m3/h
             * @example m3/min
             * @example L/s
             * @example ft3/min
             * @example %
             * @example 1
             * @example ppm
             * @example pulses/rev
             * @example pulses/100m
             * @example kPa
             * @example mbar
             * @example psi
             * @example inH2O
             * @example degC
             * @example degF
             */
            unit: string;
        };
        /** @description An area. */
        AreaQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "ha" | "m2" | "ac" | "ft2";
        };
        /** @description A value that was used although the question did not state it. */
        AssumptionAnswer: {
            /** @description What it is called. */
            name: string;
            /** @description The member that overrides it, as a JSON pointer into the question (of a stored test, into its resolved question). Absent where nothing overrides it. Without a `value`, `number`, `word` or `flag` here, what goes there has more than one part, or was found from the question. */
            pointer?: string;
            /** @description The value, where it is a quantity. */
            value?: components["schemas"]["AnyQuantity"];
            /**
             * Format: double
             * @description The value, where it is a number without a unit.
             */
            number?: number;
            /** @description The value, where it is a word. */
            word?: string;
            /** @description The value, where it is yes or no. */
            flag?: boolean;
            /** @description Published source, common practice or judgement, in words. */
            origin: string;
            /** @description The meter it is about, where the question held several. */
            meter?: string;
        };
        /** @description One thing that was done. */
        AuditItem: {
            /** @description When (UTC). */
            at: string;
            /**
             * @description Who: `key`; `local`, somebody at the machine of the service while there were no keys; `command`, the command of the service.
             * @example key
             * @example local
             * @example command
             */
            actor: string;
            /** @description Id of the key; absent for the other actors. */
            key?: string;
            /** @description What: the name of the operation, as this contract has it; of a list, that it was exported. */
            action: string;
            /** @description Path of what was made, changed or exported. */
            target?: string;
            /** @description Identifier under which the service's operator finds the request in the logs. */
            traceId?: string;
        };
        /** @description A page of a list. */
        AuditItemPage: {
            /** @description The records of this page. */
            items: components["schemas"]["AuditItem"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description Share of a nutrient in a blend. */
        BlendShare: {
            /**
             * @description The nutrient in the form that the share is stated in. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
             * @example N
             * @example P2O5
             * @example P
             * @example K2O
             * @example K
             * @example S
             * @example SO4-S
             * @example SO3
             * @example SO4
             */
            nutrient: string;
            /** @description The share of the mass. */
            share: components["schemas"]["RatioQuantity"];
        };
        /** @description Meter speeds between which an element turns evenly and its drive keeps up; both are needed. */
        BothRotationLimits: {
            /** @description Slowest. Range: above 0 and up to 10000 rpm. */
            minimum: components["schemas"]["RotationQuantity"];
            /** @description Fastest. Range: above 0 and up to 10000 rpm. */
            maximum: components["schemas"]["RotationQuantity"];
        };
        /** @description One bound on a catch. */
        BoundAnswer: {
            /**
             * @description What bounds it. Known today: `container`, `scale-capacity`, `lift-limit`, `maximum-run-time`, `shared-shaft`.
             * @example container
             * @example scale-capacity
             * @example lift-limit
             * @example maximum-run-time
             * @example shared-shaft
             */
            bound: string;
            /** @description Largest net mass that it allows; for the container with its overflow margin. */
            mass: components["schemas"]["MassQuantity"];
        };
        /** @description A bulk density with its interval, beside what is published. */
        BulkDensityAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description The bulk density with its uncertainty. */
            bulkDensity: components["schemas"]["MeasuredBulkDensity"];
            /**
             * @description What it is known from. Known today: `weighed`, `filled-tank`, `test-weight`, `stated`, `published`.
             * @example weighed
             * @example filled-tank
             * @example test-weight
             * @example stated
             * @example published
             */
            basis: string;
            /** @description The same density in every unit. */
            inOtherUnits: components["schemas"]["BulkDensityQuantity"][];
            /** @description Parts of the relative standard uncertainty. */
            uncertaintyParts: components["schemas"]["DensityUncertaintyPart"][];
            /** @description Each weighing; absent where nothing was weighed. */
            weighings?: components["schemas"]["WeighingAnswer"][];
            /** @description What is published for the material; absent when none was named. */
            reference?: components["schemas"]["ReferenceAnswer"];
            /** @description The density of the same grain poured loosely, if the test weight is an official Canadian one, which allows for settling; absent where that does not apply. */
            looseDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description What the tank holds; absent when none was named. */
            tank?: components["schemas"]["TankAnswer"];
            /** @description What can hurt somebody on the way. Codes known today: `product-dust`, `tank-entry`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `density-unlike-reference`, `density-not-compared`, `published-density-only`, `weighings-scatter`, `small-volume`, `other-bushel`, `test-weight-settled`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        BulkDensityAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["BulkDensityAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description The mass of a product per bulk volume. A bushel is always named. */
        BulkDensityQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/hL" | "kg/m3" | "kg/L" | "lb/ft3" | "lb/bu-us" | "lb/bu-imp";
        };
        /** @description A product whose bulk density is wanted. At most one of weighed, testWeight, filledTank and statedDensity; without any, a reference gives a value to start from. */
        BulkDensityRequest: {
            /** @description What the owner calls the product. */
            product?: string;
            /**
             * @description The material whose published densities are compared; needed where nothing else is given.
             * @enum {string}
             */
            reference?: "alfalfa" | "ammonium-nitrate-low-density" | "ammonium-nitrate-prilled" | "ammonium-sulfate-crystal" | "ammonium-sulfate-granular" | "barley" | "birdsfoot-trefoil" | "bluegrass" | "brome-grass" | "canary-seed" | "canola" | "chickpea" | "clover" | "cowpea" | "diammonium-phosphate" | "faba-bean" | "flax" | "lupin" | "corn" | "millet" | "monoammonium-phosphate" | "oat" | "orchard-grass" | "pea" | "potassium-chloride-granular" | "potassium-chloride-soluble" | "potassium-magnesium-sulfate" | "rice" | "rye" | "safflower" | "sorghum" | "soybean" | "sudan-grass" | "sugar-beet" | "sunflower" | "tall-fescue" | "timothy" | "triple-superphosphate" | "triticale" | "urea-granular" | "vetch" | "wheat";
            /** @description Weighings of a container of known volume; the best evidence. */
            weighed?: components["schemas"]["WeighedVolumeOfProduct"];
            /** @description A test weight, for example from the elevator. A bushel is always named. No default. Range: 10 to 10000 kg/m3. */
            testWeight?: components["schemas"]["TestWeightOfProduct"];
            /** @description A tank that was filled with a known mass. */
            filledTank?: components["schemas"]["FilledTankOfProduct"];
            /** @description A density that somebody stated; it is challenged when it is far from what is published for the reference. No default. Range: 10 to 10000 kg/m3. */
            statedDensity?: components["schemas"]["StatedDensityOfProduct"];
            /** @description Standard uncertainty of one lot about a published value, where nothing but the reference is given. Default 5 %: one lot about a published value; judgement, no published source. Range: 0 to 50 %. */
            lotToLot?: components["schemas"]["RatioQuantity"];
            /** @description A tank to be filled with the product: what does it hold, and how far does that go? */
            tank?: components["schemas"]["TankOfProduct"];
            /**
             * Format: double
             * @description Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
        };
        /** @description Area worked at one ground speed. */
        CapacityAnswer: {
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Area worked in one hour. */
            areaPerHour: components["schemas"]["AreaQuantity"];
            /** @description Share of the time in the field that is spent working. */
            fieldEfficiency: components["schemas"]["RatioQuantity"];
            /** @description Area worked in a day of the stated time; absent without one. */
            areaPerDay?: components["schemas"]["AreaQuantity"];
            /** @description Time in the field for the stated area; absent without one. */
            timeForArea?: components["schemas"]["TimeQuantity"];
        };
        /** @description One catch as evaluated. */
        CatchAnswer: {
            /** @description Net mass as the scale showed it. */
            net: components["schemas"]["MassQuantity"];
            /** @description Mass metered: corrected for the known error of the scale and scaled to all points; absent when it equals the net mass. */
            metered?: components["schemas"]["MassQuantity"];
            /** @description Revolutions of the meter. */
            revolutions: components["schemas"]["RevolutionsQuantity"];
            /** @description Mass per revolution of this catch alone. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Why the sender left it out; absent when it counts. */
            excludedBecause?: string;
        };
        /** @description One catch: what was weighed, as gross and tare (or the sharedTare of the test) or as net; and how far the meter turned, as exactly one of revolutions, pulses, turns, indicatedMass and runTime. */
        CatchOfTest: {
            /** @description Mass with the container. No default. Range: above 0 and up to 1000 t. */
            gross?: components["schemas"]["MassQuantity"];
            /** @description Mass of the empty container. No default. Range: 0 to 1000 t. */
            tare?: components["schemas"]["MassQuantity"];
            /** @description Net mass, in place of gross and tare. No default. Range: above 0 and up to 1000 t. */
            net?: components["schemas"]["MassQuantity"];
            /** @description Revolutions of the meter. No default. Range: above 0 and up to 1000000 rev. */
            revolutions?: components["schemas"]["RevolutionsQuantity"];
            /**
             * Format: double
             * @description Sensor pulses, a plain count. No default.
             */
            pulses?: number;
            /** @description Turns of a crank or wheel. No default. Range: above 0 and up to 1000000 rev. */
            turns?: components["schemas"]["RevolutionsQuantity"];
            /** @description Mass that the machine believes to have metered. No default. Range: above 0 and up to 1000 t. */
            indicatedMass?: components["schemas"]["MassQuantity"];
            /** @description Run time at the steady meter speed. No default. Range: above 0 and up to 24 h. */
            runTime?: components["schemas"]["TimeQuantity"];
            /** @description Leaves the catch out of the evaluation but in the answer. */
            excluded?: components["schemas"]["Exclusion"];
        };
        /** @description A planned catch test. */
        CatchPlanAnswer: {
            /** @description The plan in one sentence that can be shown as it is. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description The meters in the order given. */
            meters: components["schemas"]["MeterPlanAnswer"][];
            /** @description No simulated speed keeps all meters within their limits, so they run one after the other, each at its own. */
            oneAfterTheOther: boolean;
            /**
             * Format: int32
             * @description Containers that stand under the meters at the same time.
             */
            containersNeeded: number;
            /** @description When to stop which meter, first stop first; stops closer than ten seconds share a group. Where the meters run one after the other, each from its own start. */
            stopOrder: components["schemas"]["StopAnswer"][];
            /** @description What to do, as a set: a step may begin when every step it comes after is done. */
            steps: components["schemas"]["StepAnswer"][];
            /** @description What can hurt somebody; show them with the steps. Codes known today: `manual-first`, `unexpected-start`, `rotating-parts`, `stored-pressure`, `product-dust`, `tank-entry`, `heavy-container`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `container-nearly-full`, `bounds-cross`, `wide-speed-range`, `short-run`, `simulated-speed-moved`, `meters-run-apart`, `too-few-containers`, `stops-close-together`, `coarse-scale`, `small-catch`, `precision-out-of-reach`, `outside-meter-window`, `more-than-the-element-holds`, `fill-unlike-expected`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        CatchPlanAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["CatchPlanAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A catch test to be planned: one or several meters in one run. */
        CatchPlanRequest: {
            /** @description Ground speed that the controller is to be made to believe in during the run; usually the planned one. Where it takes a meter beyond its limits or leaves too short a run, the answer plans with another. Range: above 0 and up to 100 km/h. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Ground speeds between which the field will be worked; the meter speeds at both ends are checked. */
            workingSpeeds?: components["schemas"]["SpeedRange"];
            /**
             * @description How the meters are driven: `separate` drives that may stop one by one (the default), or a `shared-shaft`.
             * @enum {string}
             */
            drive?: "separate" | "shared-shaft";
            /** @description Largest acceptable expanded uncertainty of the result. Default 3 %: default; judgement, no published source. Range: 0.1 to 50 %. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Probability with which the number of catches reaches it. Default 80 %: probability with which the number of catches asked for is enough; judgement, no published source. Range: 50 to 99 %. */
            precisionProbability?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
            /** @description Longest run of one catch. Default 300 s: default; judgement, no published source. Range: above 0 and up to 24 h. */
            maximumRunTime?: components["schemas"]["TimeQuantity"];
            /** @description Shortest run of one catch, not above the longest. A drive takes some seconds to settle. Default 20 s: a drive takes some seconds to settle; judgement, no published source. Range: above 0 and up to 24 h. */
            minimumRunTime?: components["schemas"]["TimeQuantity"];
            /**
             * Format: int32
             * @description How many of the container are at hand. With fewer than meters that share it, the answer says so. No default.
             */
            containersAtHand?: number;
            /** @description Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first. Range: above 0 and up to 1000 t. */
            liftLimit?: components["schemas"]["MassQuantity"];
            /** @description The scale that will weigh the catches. */
            scale: components["schemas"]["ScaleOfTest"];
            /**
             * @description How the empty container will be taken into account: `each` (the default), `shared` or `zeroed`.
             * @enum {string}
             */
            tareReading?: "each" | "shared" | "zeroed";
            /** @description Smallest step of the revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            counterResolution?: components["schemas"]["RevolutionsQuantity"];
            /**
             * @description Where a count begins within its smallest step: `free` (the default) or `on-edge` of the sensor.
             * @enum {string}
             */
            countStart?: "free" | "on-edge";
            /** @description The container under each meter that does not name its own. */
            container?: components["schemas"]["ContainerOfPlan"];
            /** @description The meters of the run. */
            meters: components["schemas"]["MeterOfPlan"][];
            /** @description What the test disturbs on this machine and has to be put back, in the owner's words. */
            restorePoints?: components["schemas"]["RestorePoint"][];
        };
        /** @description The evaluation of a catch test. */
        CatchTestAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What to do: `investigate` (something is wrong with the test), `repeat` (not sure enough yet), `keep` (the value in force is good enough) or `adopt` (type in the new value).
             * @example investigate
             * @example repeat
             * @example keep
             * @example adopt
             */
            verdict: string;
            /**
             * Format: int32
             * @description How many more catches a repeat takes; absent for other verdicts and when no number of catches would help. Where precision is missing, so many are enough with the probability precisionProbability.
             */
            moreCatches?: number;
            /** @description The relative expanded uncertainty to expect after moreCatches, where precision is what is missing. */
            expectedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Why. Codes known today: `likely-mistake`, `more-than-the-container-holds`, `load-beyond-capacity`, `more-than-the-element-holds`, `scale-check-failed`, `cannot-be-told-apart`, `stray-catch`, `catches-scatter-more-than-expected`, `precision-not-reached`, `precision-out-of-reach`, `second-test-needed`, `tests-disagree`, `change-confirmed`, `catch-apart`, `exclusion-decides`, `within-tolerance`, `no-practical-change`, `no-value-in-force`, `change-detected`, `within-tolerance-not-shown`, `old-scale-explains-change`. */
            reasons: components["schemas"]["ReasonAnswer"][];
            /** @description The mass per revolution found, with its uncertainty. */
            massPerRevolution: components["schemas"]["MeasuredMassPerRevolution"];
            /** @description Total mass over total revolutions: can be redone on paper. */
            totalMassOverTotalRevolutions: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Plain mean of the ratios of the catches: can be redone on paper. */
            meanOfRatios: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Where the uncertainty comes from: standard uncertainties, relative; their squares add up. */
            uncertaintyParts: components["schemas"]["UncertaintyPart"][];
            /** @description Every catch in the order given. */
            catches: components["schemas"]["CatchAnswer"][];
            /** @description How the catches that count agree. */
            agreement: components["schemas"]["AgreementAnswer"];
            /** @description Change against the value in force or the start value, with its interval; absent without either. */
            change?: components["schemas"]["MeasuredRatio"];
            /**
             * @description What the change is measured from: `value-in-force` or `start-value`.
             * @example value-in-force
             * @example start-value
             */
            changeFrom?: string;
            /**
             * Format: double
             * @description Probability that the true mass per revolution is within the tolerance of the value compared with.
             */
            probabilityWithinTolerance?: number;
            /** @description Old and new value combined; offered when the uncertainty of the old one is known and no change was detected. */
            combinedWithPrevious?: components["schemas"]["MeasuredMassPerRevolution"];
            /** @description How the earlierTest of the question bears this one out; absent without one, or without a value to compare both with. An earlier test is combined with this one only when it is later than the last adoption. */
            secondTest?: components["schemas"]["SecondTestAnswer"];
            /** @description Mistakes that would explain the test, the most probable first, each with its one check. Those under a probability of 10 % are left out, except where the change is so large that a second test is asked for: then everything that could explain it is listed, however improbable. Of a smaller change, what fits it exactly is listed where it is not negligible; the verdict never changes by that. Empty when none stands out. Codes known today: `pounds-as-kilograms`, `kilograms-as-pounds`, `tare-not-taken-off`, `tare-taken-off-twice`, `tare-of-another-container`, `decimal-slip`, `digit-wrong`, `count-doubled`, `count-halved`, `meter-not-primed`, `container-overflowed`, `tank-bridged-or-empty`, `meter-isolated`, `catch-point-missed`, `half-of-points-as-whole`, `container-not-emptied`, `counter-not-reset`, `residue-in-container`, `wind-or-hand`, `ounces-as-decimals`, `pulses-per-revolution-wrong`, `turns-of-another-shaft`, `another-element`, `another-product`, `value-in-another-unit`, `value-in-force-wrong`, `start-value-wrong`, `something-else`. */
            likelyMistakes: components["schemas"]["LikelyMistakeAnswer"][];
            /** @description The mass per revolution that serves best from now on, with the verdict adopt: what the test found, what it and an earlier test found together, or between it and a value in force whose relativeUncertainty is known. What the test alone found stays in massPerRevolution. */
            valueToUse?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description What to type in for valueToUse; given with the verdict adopt when the controller's form is known. */
            enter?: components["schemas"]["EntryAnswer"];
            /** @description The measured value in the controller's form; given with the verdicts keep and adopt when that form is known. */
            measuredEntry?: components["schemas"]["EntryAnswer"];
            /** @description The value in force in the controller's form, with what its rounding makes of it; given with the verdicts keep and adopt when that form is known. */
            valueInForceEntry?: components["schemas"]["EntryAnswer"];
            /** @description What happens if the value in force stays although the meter delivers something else. */
            effectIfValueInForceStays?: components["schemas"]["EffectAnswer"];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed beyond the verdict. Codes known today: `more-than-the-container-holds`, `load-beyond-capacity`, `scale-check-failed`, `conditions-differ`, `possible-mistakes`, `cannot-be-told-apart`, `likely-mistake`, `first-catch-low`, `stray-catch`, `catches-scatter-more-than-expected`, `trend-over-catches`, `additive-offset`, `small-catch`, `coarse-scale`, `load-beyond-class`, `scale-dominates`, `default-repeatability-used`, `drawn-towards-old-number`, `change-confirmed`, `entry-resolution-matters`, `mixed-mass-units`, `catch-typed-twice`, `excluded-catch-agrees`, `catch-excluded`, `more-than-the-element-holds`, `fill-unlike-expected`, `unlike-other-products`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        CatchTestAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["CatchTestAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A stored catch test. */
        CatchTestRecordAnswer: {
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: date-time
             * @description When the test was made, with the offset it was entered with.
             */
            occurredAt: string;
            /**
             * Format: date
             * @description The date of that in the machine's time zone.
             */
            localDate: string;
            /**
             * Format: date-time
             * @description When the service received it.
             */
            receivedAt: string;
            /** @description Version of the engine that evaluated it. */
            engineVersion: string;
            /** @description The request exactly as entered. */
            entered: components["schemas"]["RecordCatchTestRequest"];
            /** @description The complete question that was evaluated: the request joined with its records and its history. */
            resolved: components["schemas"]["CatchTestRequest"];
            /** @description The evaluation. */
            evaluation: components["schemas"]["CatchTestAnswer"];
            /** @description What was taken from the history. */
            usedHistory: components["schemas"]["UsedHistory"];
            /** @description What was noticed about the records the test refers to. Codes known today: `differs-from-plan`, `other-lot`, `scale-check-overdue`, `varies-from-day-to-day`, `basis-superseded`, `fits-other-product`, `stated-unlike-records`, `unlike-other-products`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What came to light after the test; absent when nothing did. Codes known today: `scale-check-failed-later`, `scale-check-changed`, `basis-superseded`, `value-in-force-changed`. */
            sinceThen?: components["schemas"]["FindingAnswer"][];
            /** @description The record that took its place, with the reason; absent while the test stands. */
            supersededBy?: components["schemas"]["Supersedes"];
        };
        /** @description A catch test of one meter with one product. */
        CatchTestRequest: {
            /**
             * @description How the empty container was taken into account: `each` catch has its own tare reading, one reading is `shared` by all, or the scale was `zeroed` with the empty container on it. Default: each, or shared when sharedTare is given.
             * @enum {string}
             */
            tareReading?: "each" | "shared" | "zeroed";
            /** @description The one tare reading that serves all catches. No default. Range: above 0 and up to 1000 t. */
            sharedTare?: components["schemas"]["MassQuantity"];
            /**
             * @description Where a count begins within its smallest step: `free` (anywhere, the default) or `on-edge` of the sensor.
             * @enum {string}
             */
            countStart?: "free" | "on-edge";
            /** @description Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            turnResolution?: components["schemas"]["RevolutionsQuantity"];
            /** @description Steady meter speed; needed when catches give a run time or the controller takes a mass per time. No default. Range: above 0 and up to 10000 rpm. */
            meterSpeed?: components["schemas"]["RotationQuantity"];
            /** @description Smallest step of the run time. Default 0.5 s: default; judgement, no published source. Range: 0 to 60 s. */
            timeResolution?: components["schemas"]["TimeQuantity"];
            /** @description The value that was typed into the controller while it indicated a mass; default the value in force. Range: above 0 and up to 1000 kg/rev. */
            valueTypedIn?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Smallest step of the indicated mass. Default 0.1 kg: default; judgement, no published source. Range: 0 to 100 kg. */
            indicatedMassResolution?: components["schemas"]["MassQuantity"];
            /** @description Only some of the points that the meter feeds were caught, the same ones each time. */
            caughtPoints?: components["schemas"]["CaughtPointsOfTest"];
            /** @description The mass per revolution that the controller uses now: the number typed in. No default. Range: above 0 and up to 1000 kg/rev. */
            valueInForce?: components["schemas"]["ReferenceOfTest"];
            /** @description A predicted value to compare with where none is in force yet. No default. Range: above 0 and up to 1000 kg/rev. */
            startValue?: components["schemas"]["ReferenceOfTest"];
            /** @description What another lot is expected to give where that is not the value in force, for example the prediction for a new lot: the limit secondTestChange then counts from it, and mistakes are judged against it. No default. Range: above 0 and up to 1000 kg/rev. */
            predictedValue?: components["schemas"]["PredictedValueOfTest"];
            /** @description An earlier test of the same meter, element, setting, product and lot, set up apart from this one since the value in force was adopted. A change of at least secondTestChange is adopted when the two agree. A test before the last adoption is not combined. No default. Range: above 0 and up to 1000 kg/rev. */
            earlierTest?: components["schemas"]["EarlierTestOfTest"];
            /** @description The rate to be applied; gives the effect of a wrong value. No default. Range: above 0 and up to 100000 kg/ha. */
            targetRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The area still to be seeded; gives mass and cost. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description The catches in the order in which they were made. */
            catches: components["schemas"]["CatchOfTest"][];
            /** @description The product is of another lot than the one behind the value compared with: a larger change is then ordinary. Default false. */
            newLot?: boolean;
            /**
             * Format: int32
             * @description Points or outlets whose product is meant to fall into the container; tells what one missed point would look like. No default.
             */
            catchPoints?: number;
            /** @description Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement. */
            ruledOutMistakes?: ("pounds-as-kilograms" | "kilograms-as-pounds" | "tare-not-taken-off" | "tare-taken-off-twice" | "tare-of-another-container" | "decimal-slip" | "digit-wrong" | "count-doubled" | "count-halved" | "meter-not-primed" | "container-overflowed" | "tank-bridged-or-empty" | "meter-isolated" | "catch-point-missed" | "half-of-points-as-whole" | "container-not-emptied" | "counter-not-reset" | "residue-in-container" | "wind-or-hand" | "ounces-as-decimals" | "pulses-per-revolution-wrong" | "turns-of-another-shaft" | "another-element" | "another-product" | "value-in-another-unit" | "value-in-force-wrong" | "start-value-wrong" | "something-else")[];
            /** @description Repeatability of one catch (standard deviation), scale and counter parts removed. Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev; with 2.9 % in place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
            repeatability?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2).
             */
            repeatabilityDegreesOfFreedom?: number;
            /** @description Standard deviation from day to day beyond the scatter of catches. Default 1 %: default until the series has five tests; judgement, no published source. Range: 0 to 20 %. */
            dayToDay?: components["schemas"]["RatioQuantity"];
            /** @description Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %. */
            tolerance?: components["schemas"]["RatioQuantity"];
            /** @description Largest acceptable expanded uncertainty of the result. Default 3 %: default; judgement, no published source. Range: 0.1 to 50 %. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Probability with which the number of further catches that a repeat asks for reaches the wanted precision. Default 80 %: probability with which the number of catches asked for is enough; judgement, no published source. Range: 50 to 99 %. */
            precisionProbability?: components["schemas"]["RatioQuantity"];
            /** @description Change from what was expected, from which a second test, set up anew, has to agree before anything is adopted. Default twice the tolerance. Default 10 %: twice the tolerance, by default twice the published 5 %: less can be one tolerance each of the old value and the new; judgement. Range: 0.1 to 100 %. */
            secondTestChange?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
            /** @description What the owner calls the meter. */
            meter?: string;
            /** @description The product. */
            product?: components["schemas"]["ProductOfTest"];
            /** @description The scale that weighed the catches. */
            scale: components["schemas"]["ScaleOfTest"];
            /** @description Smallest step of the revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            counterResolution?: components["schemas"]["RevolutionsQuantity"];
            /** @description The metering element that is fitted. With the bulk density of the product it says what a value can be; where neither valueInForce nor startValue is given, the start value comes from both. */
            fittedElement?: components["schemas"]["FittedElement"];
            /** @description Conditions during the test. */
            conditions?: components["schemas"]["Conditions"];
            /** @description Conditions that are expected in sowing; conditions far from them are said in the headline. */
            sowingConditions?: components["schemas"]["Conditions"];
            /**
             * Format: int32
             * @description Pockets or flutes of the metering element that discharge one after the other in one revolution, where known. No default.
             */
            pocketsPerRevolution?: number;
            /** @description Sensor pulses per meter revolution; needed when catches give pulses or the controller takes a mass per pulse. No default. Range: above 0 and up to 1000000 pulses/rev. */
            pulsesPerRevolution?: components["schemas"]["PulsesPerRevolutionQuantity"];
            /** @description Meter revolutions per turn of the crank or wheel; needed when catches give turns. No default. Range: 0.0001 to 10000. */
            meterRevolutionsPerTurn?: components["schemas"]["RatioQuantity"];
            /** @description The form in which the controller takes the value. */
            controllerEntry?: components["schemas"]["ControllerEntryOfTest"];
            /** @description The container of the catches, where known; makes overflow and a forgotten tare easier to tell. */
            container?: components["schemas"]["ContainerOfTest"];
            /** @description Other containers at hand, whose tare may have been taken by mistake. */
            otherContainers?: components["schemas"]["OtherContainerOfTest"][];
            /** @description Other metering elements or settings of this meter and what they would give of this product. */
            otherElements?: components["schemas"]["OtherDeliveryOfTest"][];
            /** @description Other products of this machine and what the fitted element would give of them. */
            otherProducts?: components["schemas"]["OtherDeliveryOfTest"][];
        };
        /** @description A partial catch. */
        CaughtPointsOfTest: {
            /**
             * Format: int32
             * @description Points that were caught.
             */
            caught: number;
            /**
             * Format: int32
             * @description Points that the meter feeds.
             */
            total: number;
            /** @description Standard deviation between points, relative. Default 2.887 %: published limit of 5 % for each outlet (University of Georgia Extension; Field and Solie 2007), taken as rectangular. Range: 0 to 100 %. */
            spread?: components["schemas"]["RatioQuantity"];
        };
        /** @description Something that can hurt a person. */
        CautionAnswer: {
            /** @description Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each. */
            code: string;
            /** @description A sentence that should be shown as it is. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
        };
        /** @description One stored change. */
        ChangeItem: {
            /**
             * Format: int64
             * @description Its number: 1 for the first change of the workspace, one more with each, and none is left out.
             */
            sequence: number;
            /**
             * @description Kind of the record; read it under the path of its kind. Known today: `machine`, `product`, `lot`, `scale`, `container`, `plan`, `catch-test`, `adoption`, `scale-check`.
             * @example machine
             * @example product
             * @example lot
             * @example scale
             * @example container
             * @example plan
             * @example catch-test
             * @example adoption
             * @example scale-check
             */
            kind: string;
            /** @description Id of the record. */
            id: string;
            /**
             * Format: int64
             * @description 1 when the record was stored first, one more with each change of it. That of a described record is the one in its ETag: `"r3"` for 3.
             */
            revision: number;
            /**
             * @description What happened: `created`, `changed`, `retired` or `reinstated` (no longer retired) for what is described, `recorded` or `superseded` for evidence.
             * @example created
             * @example changed
             * @example retired
             * @example reinstated
             * @example recorded
             * @example superseded
             */
            what: string;
            /**
             * Format: date-time
             * @description When the service received it (UTC). Changes stand in the order in which they were stored, not in that of any times.
             */
            receivedAt: string;
            /**
             * Format: date-time
             * @description When that happened which the evidence tells of, with the offset it was entered with, long before it was received perhaps; absent for what is described.
             */
            occurredAt?: string;
            /** @description Id of the machine that it is about, where it is about one. */
            machine?: string;
            /** @description Id of the machine that a plan was for until then, where that was another. */
            machineBefore?: string;
            /** @description Id of the record that took its place; only with `superseded`. */
            supersededBy?: string;
            /** @description The cursor behind this change: give it as `after` to go on with the next one, at any time. */
            cursor: string;
        };
        /** @description A page of the changes. */
        ChangePage: {
            /** @description The changes of this page, oldest first. */
            items: components["schemas"]["ChangeItem"][];
            /**
             * Format: uri
             * @description Address of the next page; absent when there is nothing more yet.
             */
            next?: string;
            /** @description The cursor behind everything that this page looked at. Keep it: given as `after`, it lists what was stored since, however much later. */
            after: string;
        };
        /** @description A value beside the expected one. */
        CheckedAnswer: {
            /** @description The value divided by the expected one. */
            ratio: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description How many standard deviations it is away, on a logarithmic scale: above zero more than expected, below zero less. Absent when no spread was left to measure with.
             */
            deviations?: number;
            /** @description The fill efficiency that the value implies. */
            fillEfficiency: components["schemas"]["ExpectedRatio"];
        };
        /** @description One code, what it comes from and what to do. */
        CodeAnswer: {
            /** @description The code as answers carry it. It never changes its meaning. */
            code: string;
            /**
             * @description Where it comes: an `error` in a problem, because the request has to be put right; a `refusal` in a problem, because a well-formed question has no sound answer; a `finding` among the findings and reasons of an answer; a `caution` where work can hurt somebody; a `mistake` among the likely mistakes of a catch test.
             * @example error
             * @example refusal
             * @example finding
             * @example caution
             * @example mistake
             */
            kind: string;
            /** @description The HTTP statuses that it comes with; absent when it comes with an answer. */
            statuses?: number[];
            /** @description The severities that it comes with, as findings name them; absent when it is no finding. Known today: `note`, `warning`, `stop`. */
            severities?: string[];
            /** @description What it comes from, in a sentence. */
            cause: string;
            /** @description What to do, in short sentences. */
            remedy: string;
        };
        /** @description Every code that answers carry. */
        CodesAnswer: {
            /** @description The codes, by kind and then in the order of the alphabet. */
            codes: components["schemas"]["CodeAnswer"][];
        };
        /** @description Conditions of a test or of sowing. */
        Conditions: {
            /** @description Fill of the tank. No default. Range: 0 to 100 %. */
            tankLevel?: components["schemas"]["RatioQuantity"];
            /** @description Pressure in the tank above that of the air around. No default. Range: 0 to 100 kPa. */
            tankPressure?: components["schemas"]["PressureQuantity"];
            /** @description Slope of the machine along its travel, uphill positive. No default. Range: -100 to 100 %. */
            slope?: components["schemas"]["RatioQuantity"];
            /** @description Moisture of the product by mass. No default. Range: 0 to 100 %. */
            productMoisture?: components["schemas"]["RatioQuantity"];
            /** @description Temperature of the air. No default. Range: -60 to 70 degC. */
            airTemperature?: components["schemas"]["TemperatureQuantity"];
            /** @description Speed of the fan. No default. Range: 0 to 10000 rpm. */
            fanSpeed?: components["schemas"]["RotationQuantity"];
        };
        /** @description A container as stored. */
        ContainerAnswer: {
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Volume. */
            volume?: components["schemas"]["VolumeQuantity"];
            /** @description Mass of the empty container. */
            tare: components["schemas"]["MassQuantity"];
            /** @description Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published source. */
            fill?: components["schemas"]["RatioQuantity"];
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
        };
        /** @description A page of a list. */
        ContainerAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["ContainerAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A container for one catch. */
        ContainerOfPlan: {
            /** @description Volume; without it the container bounds nothing. With it, every meter needs the bulk density of its product. No default. Range: above 0 and up to 10 m3. */
            volume?: components["schemas"]["VolumeQuantity"];
            /** @description Mass of the empty container. Range: 0 to 10 t. */
            tare: components["schemas"]["MassQuantity"];
            /** @description Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published source. Range: 1 to 100 %. */
            fill?: components["schemas"]["RatioQuantity"];
        };
        /** @description The container of the catches. */
        ContainerOfTest: {
            /** @description Volume; with the bulk density of the product it says when the container runs over. No default. Range: above 0 and up to 10 m3. */
            volume?: components["schemas"]["VolumeQuantity"];
            /** @description Mass of the empty container, for catches that give a net mass or no tare above zero. It is never taken off: it only tells what a forgotten tare would look like. No default. Range: 0 to 10 t. */
            tare?: components["schemas"]["MassQuantity"];
        };
        /** @description A container for catches. */
        ContainerRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired?: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Volume. No default. Range: above 0 and up to 10 m3. */
            volume?: components["schemas"]["VolumeQuantity"];
            /** @description Mass of the empty container. Range: 0 to 10 t. */
            tare: components["schemas"]["MassQuantity"];
            /** @description Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published source. Range: 1 to 100 %. */
            fill?: components["schemas"]["RatioQuantity"];
        };
        /** @description How a controller takes the value. */
        ControllerEntryOfTest: {
            /**
             * @description The form: mass-per-revolution, mass-per-revolutions, mass-per-pulse, volume-per-revolution or mass-per-time.
             * @enum {string}
             */
            form: "mass-per-revolution" | "mass-per-revolutions" | "mass-per-pulse" | "volume-per-revolution" | "mass-per-time";
            /**
             * @description Unit of the number: one of mass per revolution; of mass, for stated revolutions or a pulse; of volume; or of mass per time, as the form asks.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev" | "kg" | "g" | "t" | "lb" | "oz" | "ton-us" | "ton-uk" | "L" | "m3" | "bu-us" | "bu-imp" | "ft3" | "kg/min" | "g/s" | "lb/min";
            /**
             * Format: int32
             * @description Decimals that the controller takes.
             */
            decimals: number;
            /**
             * Format: int32
             * @description Revolutions that the number stands for: needed with the form mass-per-revolutions, and only with it. No default.
             */
            revolutions?: number;
        };
        /** @description One combination of rate and ground speed. */
        CornerAnswer: {
            /** @description The rate. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description The meter speed that it takes. */
            meterSpeed: components["schemas"]["RotationQuantity"];
            /** @description Inside the limits. */
            withinLimits: boolean;
            /** @description Ground between two discharges; absent when the pockets are unknown. */
            dischargeSpacing?: components["schemas"]["LengthQuantity"];
        };
        /** @description A correction in proportion. */
        CorrectionAnswer: {
            /** @description Target over rate found: what to multiply the setting by. */
            factor: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description The setting times that factor, as a plain number on the machine's own marks; absent when no setting was stated.
             */
            setting?: number;
            /** @description Meter revolutions per turn times that factor, for a machine that is set by its gears; absent when no gearing was stated. */
            meterRevolutionsPerTurn?: components["schemas"]["RatioQuantity"];
        };
        /** @description An amount of money for one mass unit of a nutrient. */
        CostOfNutrient: {
            /**
             * Format: double
             * @description The amount.
             */
            value: number;
            /** @description ISO 4217 currency code. */
            currency: string;
            /** @description The unit that it is for, one of those in `GET /v1/units`. */
            per: string;
            /**
             * @description The nutrient in the form that the cost is for. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
             * @example N
             * @example P2O5
             * @example P
             * @example K2O
             * @example K
             * @example S
             * @example SO4-S
             * @example SO3
             * @example SO4
             */
            nutrient: string;
        };
        /** @description An amount of money for one unit of area or mass. */
        CostPerUnit: {
            /**
             * Format: double
             * @description The amount.
             */
            value: number;
            /** @description ISO 4217 currency code. */
            currency: string;
            /** @description The unit that it is for, one of those in `GET /v1/units`. */
            per: string;
        };
        /** @description One count. */
        CountAnswer: {
            /**
             * Format: int32
             * @description Plants counted.
             */
            plants: number;
            /** @description Ground counted. */
            area: components["schemas"]["AreaQuantity"];
            /** @description Plants per area of this spot. */
            stand: components["schemas"]["CountPerAreaQuantity"];
        };
        /** @description The plants of one spot. */
        CountOfPlants: {
            /**
             * Format: int32
             * @description Plants counted; none is a count too.
             */
            plants: number;
            /** @description The ground of this count, where it differs from that of the others. */
            ground?: components["schemas"]["GroundOfCount"];
            /** @description The row or opener where it was counted, in the words of the counter; counts of one row say less. */
            row?: string;
        };
        /** @description Plants or seeds per area. */
        CountPerAreaQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "/m2" | "/ha" | "/ft2" | "/ac";
        };
        /** @description Plants or seeds per length of row. */
        CountPerLengthQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "/m" | "/ft";
        };
        /** @description Seeds per mass. */
        CountPerMassQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "/kg" | "/lb";
        };
        /** @description A share of the seeds that was counted in a stand. */
        CountedShare: {
            /** @description The estimate. Range: 0.1 to 100 %. */
            estimate: components["schemas"]["RatioQuantity"];
            /** @description Lower end of its interval. Range: 0 to 1000 %. */
            lower: components["schemas"]["RatioQuantity"];
            /** @description Upper end of its interval. Range: 0 to 1000 %. */
            upper: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Coverage probability of the interval.
             */
            coverageProbability: number;
        };
        /** @description A nutrient that is there already. */
        CreditedNutrient: {
            /**
             * @description The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4.
             * @enum {string}
             */
            nutrient: "N" | "P2O5" | "P" | "K2O" | "K" | "S" | "SO4-S" | "SO3" | "SO4";
            /** @description Amount per area. Range: 0 to 10000 kg/ha. */
            amount: components["schemas"]["MassPerAreaQuantity"];
            /** @description Where it comes from, in your words. */
            origin?: string;
        };
        /** @description A mass per revolution at one meter speed. */
        DeliveryPoint: {
            /** @description The meter speed. Range: above 0 and up to 10000 rpm. */
            meterSpeed: components["schemas"]["RotationQuantity"];
            /** @description The mass per revolution there. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
        };
        /** @description A bulk density of a lot. */
        DensityOfLot: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/hL" | "kg/m3" | "kg/L" | "lb/ft3" | "lb/bu-us" | "lb/bu-imp";
            /** @description Its standard uncertainty, relative. Default 1 %: a weighed litre, or a test weight, repeats to about this; judgement, no published source. Range: above 0 and up to 50 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description A bulk density. */
        DensityOfProduct: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/hL" | "kg/m3" | "kg/L" | "lb/ft3" | "lb/bu-us" | "lb/bu-imp";
            /** @description Its standard uncertainty. Default 3 %: standard uncertainty of a bulk density; judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description A part of the uncertainty. */
        DensityUncertaintyPart: {
            /**
             * @description Where it comes from: scatter of the `weighings`, `scale`, `volume`, the `mass` filled in, `test-weight`, `stated`, `published-range` or the `lot`.
             * @example weighings
             * @example scale
             * @example volume
             * @example mass
             * @example test-weight
             * @example stated
             * @example published-range
             * @example lot
             */
            source: string;
            /** @description Standard uncertainty, relative. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description What spoke against a typed number, and why it is right all the same. */
        Despite: {
            /**
             * @description The code that the refusal gave. Known today: `typed-decimal-slip`, `typed-twice-or-half`, `typed-in-other-unit`, `typed-off-test`, `typed-off-value-in-force`, `typed-off-last-test`, `typed-more-than-element-holds`.
             * @example typed-decimal-slip
             * @example typed-twice-or-half
             * @example typed-in-other-unit
             * @example typed-off-test
             * @example typed-off-value-in-force
             * @example typed-off-last-test
             * @example typed-more-than-element-holds
             * @enum {string}
             */
            code: "typed-decimal-slip" | "typed-twice-or-half" | "typed-in-other-unit" | "typed-off-test" | "typed-off-value-in-force" | "typed-off-last-test" | "typed-more-than-element-holds";
            /** @description Why the number is right, in the words of the person who typed it in. */
            reason: string;
        };
        /** @description One value that differs. */
        DifferenceAnswer: {
            /** @description Where in the evaluation, as a JSON pointer. */
            pointer: string;
            /** @description The stored value as JSON text; absent when there was none. */
            stored?: string;
            /** @description The value now as JSON text; absent when there is none. */
            recomputed?: string;
        };
        /** @description The volume that one revolution sweeps. */
        DisplacementOfElement: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "L" | "m3" | "bu-us" | "bu-imp" | "ft3";
            /** @description Its standard uncertainty. Default 2 %: standard uncertainty of a displacement; judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description The displacements with which the meter stays inside its speeds. */
        DisplacementWindowAnswer: {
            /** @description Smallest: below it the meter would have to turn too fast. */
            lower: components["schemas"]["VolumeQuantity"];
            /** @description Largest: above it the meter would turn too slowly. Less than the smallest where the window is empty. */
            upper: components["schemas"]["VolumeQuantity"];
            /** @description Geometric middle of the two: as far from too slow as from too fast. */
            middle: components["schemas"]["VolumeQuantity"];
            /** @description No displacement serves. */
            isEmpty: boolean;
            /** @description Standard deviation of the natural logarithm of both ends, which move together: the relative standard uncertainty. */
            spread: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Probability that a displacement in the middle serves: no other has a higher one.
             */
            bestProbability: number;
        };
        /** @description The effect of wrong numbers. */
        DistanceEffectAnswer: {
            /** @description Rate applied over rate set, less 1, with the interval of the runs: positive when the field gets too much. */
            rateChange: components["schemas"]["MeasuredRatio"];
            /** @description Distance counted over distance driven; absent without a value in force. */
            distanceCounted?: components["schemas"]["RatioQuantity"];
            /** @description Width in the controller over width covered anew; absent without a width. */
            widthCounted?: components["schemas"]["RatioQuantity"];
            /** @description Area counted over area covered: the product of the two. Without a value in force the distance counts as right. */
            areaCounted: components["schemas"]["RatioQuantity"];
            /** @description The rate that is really applied; absent without a target rate. */
            appliedRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Product too much over the stated area; negative when too little. */
            massOverArea?: components["schemas"]["MassQuantity"];
            /** @description Money for that product; negative when the crop gets too little. */
            totalCost?: components["schemas"]["Money"];
        };
        /** @description What runs over a measured course say of a distance sensor. */
        DistanceSensorAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What to do: `investigate` (something is wrong with the runs), `repeat` (not sure enough yet), `keep` (the value in force is good enough) or `adopt` (type in the new value).
             * @example investigate
             * @example repeat
             * @example keep
             * @example adopt
             */
            verdict: string;
            /**
             * Format: int32
             * @description How many more runs a repeat takes; absent for other verdicts and when no number of runs would help.
             */
            moreRuns?: number;
            /** @description Why. Codes known today: `runs-scatter-more-than-expected`, `more-runs-needed`, `runs-out-of-reach`, `large-change`, `within-tolerance`, `no-practical-change`, `no-value-in-force`, `distance-changed`, `within-tolerance-not-shown`. */
            reasons: components["schemas"]["ReasonAnswer"][];
            /** @description Pulses per distance with their uncertainty; absent when turns were counted and the pulses of a turn are unknown. */
            pulsesPerDistance?: components["schemas"]["MeasuredPulsesPerDistance"];
            /** @description Pulses per metre or foot. */
            pulsesPerLength?: components["schemas"]["CountPerLengthQuantity"];
            /** @description Distance driven from one pulse to the next. */
            distancePerPulse?: components["schemas"]["LengthQuantity"];
            /** @description Rolling circumference of the wheel under the load and on the ground of the runs; absent when its turns are unknown. */
            rollingCircumference?: components["schemas"]["MeasuredLength"];
            /** @description All pulses over all distances: can be redone on paper. */
            totalPulsesOverTotalDistance?: components["schemas"]["PulsesPerDistanceQuantity"];
            /** @description Where the uncertainty comes from: standard uncertainties, relative; their squares add up. */
            uncertaintyParts: components["schemas"]["RunUncertaintyPart"][];
            /** @description Every run in the order given. */
            runs: components["schemas"]["RunAnswer"][];
            /** @description How the runs agree. */
            agreement: components["schemas"]["RunAgreementAnswer"];
            /**
             * Format: int32
             * @description Runs like these that the wanted precision takes in all; absent when no practical number reaches it.
             */
            runsForWantedPrecision?: number;
            /** @description Skid against the reference runs, 1 - (turns per distance at work) / (turns per distance on the reference): positive when the wheel turns less often at work (it skids), negative when it turns more often (it slips). The sign is that of `skid` of a drive wheel. */
            skid?: components["schemas"]["MeasuredRatio"];
            /** @description Width of the machine, as asked. */
            width?: components["schemas"]["WidthAnswer"];
            /** @description Pulses per distance found over those in force, less 1, with its interval: positive when the sensor gives more than the controller believes. Absent without a value in force. */
            change?: components["schemas"]["MeasuredRatio"];
            /**
             * Format: double
             * @description Probability that the truth is within the tolerance of the value in force.
             */
            probabilityWithinTolerance?: number;
            /** @description What to type in; given with the verdict adopt when the controller's form is known. */
            enter?: components["schemas"]["SensorEntryAnswer"];
            /** @description What happens if the numbers in the controller stay; absent when none of them is known. */
            effectIfNumbersStay?: components["schemas"]["DistanceEffectAnswer"];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed beyond the verdict. Codes known today: `runs-scatter-more-than-expected`, `directions-differ`, `large-change`, `short-course`, `single-reading`, `tape-dominates`, `wheel-slips`, `width-differs`, `entry-resolution-matters`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What can hurt somebody on the course. Codes known today: `manual-first`, `moving-machine`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        DistanceSensorAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["DistanceSensorAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description Runs over a measured course, and what the controller holds. */
        DistanceSensorRequest: {
            /** @description The runs at work, on the ground that is seeded: one or more, each with pulses or each with wheel turns. */
            runs: components["schemas"]["RunOfSensor"][];
            /** @description Runs to compare skid with, unloaded or on a hard road, counted like the others. */
            referenceRuns?: components["schemas"]["RunOfSensor"][];
            /** @description Sensor pulses in one turn of the wheel. With it, pulses and the rolling circumference follow from one another. No default. Range: above 0 and up to 1000000 pulses/rev. */
            pulsesPerTurn?: components["schemas"]["PulsesPerRevolutionQuantity"];
            /** @description Smallest step to which a distance between two marks is known: how closely the machine is lined up with each of them. Default 0.1 m: the machine is lined up with each mark to 5 cm either way; judgement, no published source. Range: 0 to 10 m. */
            distanceResolution?: components["schemas"]["LengthQuantity"];
            /** @description Smallest step of a count of wheel turns; pulses are counted to one. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            turnResolution?: components["schemas"]["RevolutionsQuantity"];
            /** @description Limit of the error of the tape, relative. It is common to all runs, so more runs do not average it out. Default 0.2 %: a tape laid over uneven ground by hand, taken as rectangular; judgement, no published source. Range: 0 to 20 %. */
            tapeLimit?: components["schemas"]["RatioQuantity"];
            /** @description Scatter of one run (standard deviation), counting and marking removed. Default 0.5 %: even, firm ground; judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
            repeatability?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Degrees of freedom of that scatter. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2).
             */
            repeatabilityDegreesOfFreedom?: number;
            /** @description The number that the controller holds now. */
            valueInForce?: components["schemas"]["ValueOfSensor"];
            /** @description How the controller takes the number; gives what to type in. */
            controllerEntry?: components["schemas"]["EntryOfSensor"];
            /** @description The width of the machine; gives overlap, and what a wrong width does to the rate. */
            width?: components["schemas"]["WidthOfMachine"];
            /**
             * @description What turns the meters: `rate-controlled`, a drive that a controller sets by this sensor, or `ground-driven`, a wheel on the ground, so that a wrong value spoils the count of distance and area but not the rate. Default rate-controlled: common practice.
             * @enum {string}
             */
            meterDrive?: "rate-controlled" | "ground-driven";
            /** @description The rate to be applied; gives the effect of wrong numbers. No default. Range: above 0 and up to 100000 kg/ha. */
            targetRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The area still to be seeded; gives mass and cost. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description Price of the product; gives the cost of wrong numbers. */
            price?: components["schemas"]["Price"];
            /** @description Largest acceptable deviation of the value in force from the truth. Default 2 %: leaves most of the published 5 % on the rate to the metering; judgement, no published source. Range: 0.1 to 50 %. */
            tolerance?: components["schemas"]["RatioQuantity"];
            /** @description Largest acceptable expanded uncertainty of the result. Default 1 %: two good runs reach it; judgement, no published source. Range: 0.1 to 50 %. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Change from which a second run has to confirm. Default 10 %: twice the published 5 % on the rate, as for a catch test; judgement, no published source. Range: 0.1 to 100 %. */
            secondRunChange?: components["schemas"]["RatioQuantity"];
        };
        /** @description A drive wheel: exactly one of circumference, measuredRun and diameter. */
        DriveWheelOfMachine: {
            /** @description Rolling circumference, measured under load on the ground. Default pi times the diameter, where that is given: judgement, a loaded tyre rolls shorter. Range: 0.1 to 30 m. */
            circumference?: components["schemas"]["LengthQuantity"];
            /** @description Distance and turns from which the rolling circumference follows. */
            measuredRun?: components["schemas"]["RollingRun"];
            /** @description Diameter of the wheel; the circumference is then reckoned, and a finding warns of it. No default. Range: 0.03 to 10 m. */
            diameter?: components["schemas"]["LengthQuantity"];
            /** @description Standard uncertainty of the circumference, relative; 2 % where it is reckoned from the diameter. Default 0.5 %: measured on the ground; judgement, no published source. Range: 0 to 20 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description Turns of a drive wheel, expected catches, and what turn tests say. */
        DriveWheelTurnsAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What to do about the setting: `investigate` (the rate is implausible, or an outlet gave nothing), `repeat` (not sure enough, test again), `keep` (within tolerance of the target) or `correct` (take the corrected setting, then test again); `untested` without a turn test, `no-target` without a target rate.
             * @example investigate
             * @example repeat
             * @example keep
             * @example correct
             * @example untested
             * @example no-target
             */
            verdict: string;
            /** @description Why; empty without a turn test or a target rate. Codes known today: `within-tolerance`, `rate-off-target`, `rate-not-shown`, `rate-implausible`, `outlet-gave-nothing`. */
            reasons: components["schemas"]["ReasonAnswer"][];
            /** @description Rolling circumference in use. */
            circumference: components["schemas"]["LengthQuantity"];
            /**
             * @description Where it comes from: `circumference` (stated), `measured-run` (distance over turns) or `diameter` (reckoned, and too long under load).
             * @example circumference
             * @example measured-run
             * @example diameter
             */
            circumferenceFrom: string;
            /** @description Ground that the machine covers in one turn of the wheel in the field. */
            areaPerTurn: components["schemas"]["AreaQuantity"];
            /** @description For each area asked for, in that order. */
            turns: components["schemas"]["TurnsAnswer"][];
            /** @description Mass that one turn of the wheel has to deliver over the whole width for the target rate. */
            neededPerTurn?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description The same for one revolution of the meter. */
            neededPerMeterRevolution?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Meter revolutions per turn of the drive wheel that the target rate needs with the stated mass per revolution of the meter: the gear ratio to look for. */
            neededMeterRevolutionsPerTurn?: components["schemas"]["RatioQuantity"];
            /** @description Rate that the stated mass per revolution of the meter gives. */
            expectedRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Rate that the turn tests give, with its uncertainty. */
            rate?: components["schemas"]["MeasuredMassPerArea"];
            /** @description Every turn test in the order given. */
            turnTests: components["schemas"]["TurnTestAnswer"][];
            /** @description The rate against its target. */
            acceptance?: components["schemas"]["RateAcceptanceAnswer"];
            /** @description What would bring the rate to its target if it were proportional to the setting: a first step, test again. */
            correction?: components["schemas"]["CorrectionAnswer"];
            /** @description Outlets that were weighed one by one, over all tests; empty when they were not. */
            outlets: components["schemas"]["OutletAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed beyond the verdict. Codes known today: `catches-scatter-more-than-expected`, `circumference-from-diameter`, `skid-counted-twice`, `large-correction`, `rate-off-target`, `rate-implausible`, `outlet-gave-nothing`, `outlet-off-mean`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What can hurt somebody at the machine. Codes known today: `manual-first`, `unexpected-start`, `rotating-parts`, `stored-pressure`, `product-dust`, `tank-entry`, `jacked-machine`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        DriveWheelTurnsAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["DriveWheelTurnsAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A ground-driven machine, and what fell while its drive wheel was turned. */
        DriveWheelTurnsRequest: {
            /** @description The wheel that drives the meters. */
            wheel: components["schemas"]["DriveWheelOfMachine"];
            /** @description Working width: openers times spacing. Range: 0.01 to 200 m. */
            workingWidth: components["schemas"]["LengthQuantity"];
            /**
             * Format: int32
             * @description Outlets over that width; gives the catch of each, and is needed when not all of them are caught. No default.
             */
            outlets?: number;
            /** @description Share of its turns that the wheel lacks in the field: positive when it skids and turns less often than the distance asks for, so that it puts down as much less; negative when it turns more often. Leave it out when the circumference was measured at work: it holds the skid already. Default 0 %: none is reckoned with unless it is stated, although a wheel that skids puts down as much less; judgement, no published source. Range: -50 to 90 %. */
            skid?: components["schemas"]["RatioQuantity"];
            /** @description Areas for which the turns are wanted, for example 0.1 ha or 0.05 ac. Range: 0.0001 to 10000 ha. */
            areas?: components["schemas"]["AreaQuantity"][];
            /** @description The rate to be put down. No default. Range: above 0 and up to 100000 kg/ha. */
            targetRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Meter revolutions per turn of the drive wheel. Left out, nothing is said of the meter. Default none: common practice, the wheel alone is counted. Range: 0.0001 to 10000. */
            meterRevolutionsPerTurn?: components["schemas"]["RatioQuantity"];
            /** @description Mass per revolution of the meter over the whole width, where known; gives the rate to expect and, for a target rate, the gearing that it needs. Needs meterRevolutionsPerTurn or targetRate. No default. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Turn tests, all with the same setting and the same outlets. */
            turnTests?: components["schemas"]["TurnTestOfWheel"][];
            /**
             * Format: int32
             * @description Outlets that were caught, the same ones each time. Default all of them, or as many as perOutlet lists: common practice.
             */
            outletsCaught?: number;
            /** @description Standard deviation between outlets, relative; of use when not all were caught. Where three or more were weighed one by one, theirs is taken. Default 2.887 %: published limit of 5 % for each outlet (University of Georgia Extension; Field and Solie 2007), taken as rectangular. Range: 0 to 100 %. */
            outletSpread?: components["schemas"]["RatioQuantity"];
            /** @description The scale that weighed the catches. Default an error of 0.5 % of the load and no rounding: judgement, no published source. */
            scale?: components["schemas"]["ScaleOfTest"];
            /** @description Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            turnResolution?: components["schemas"]["RevolutionsQuantity"];
            /**
             * Format: double
             * @description The setting used, as a plain number on the machine's own marks; gives the corrected one. No default.
             */
            setting?: number;
            /** @description Largest acceptable deviation of the rate from its target, and of an outlet from the mean of the outlets. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %. */
            tolerance?: components["schemas"]["RatioQuantity"];
            /** @description Repeatability of one test (standard deviation), scale and count removed. Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
            repeatability?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2).
             */
            repeatabilityDegreesOfFreedom?: number;
        };
        /** @description A mass per revolution that was found earlier. */
        EarlierMassPerRevolution: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Its standard uncertainty. Default 2 %: default of a value in force: judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description An earlier product on the same element. */
        EarlierProduct: {
            /** @description The mass per revolution that was found with it. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution: components["schemas"]["EarlierMassPerRevolution"];
            /** @description Its bulk density. Range: 10 to 10000 kg/m3. */
            bulkDensity: components["schemas"]["DensityOfProduct"];
            /** @description How much the fill efficiency of one element changes from one product to another. Default 5 %: change of fill efficiency from one product to another on the same element, standard deviation of its logarithm; judgement, no published source. Range: 0 to 100 %. */
            spread?: components["schemas"]["RatioQuantity"];
        };
        /** @description An earlier test: the mass per revolution that it found, and how sure it was. Set up apart means that the container was weighed again, the points were counted, element and product were looked at, and the meter was primed again. */
        EarlierTestOfTest: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /**
             * Format: int32
             * @description Catches that counted in it.
             */
            catches: number;
            /** @description Relative standard uncertainty from its catches: the part `catches` of its uncertaintyParts. Default the repeatability of this test over the root of its number of catches. Range: above 0 and up to 100 %. */
            catchesUncertainty?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Degrees of freedom of that part. Default those of the repeatability of this test, and one for each catch but the first.
             */
            degreesOfFreedom?: number;
            /** @description Relative standard uncertainty of a tare that its catches shared: the part `shared-tare` of its uncertaintyParts. Default none. Range: 0 to 100 %. */
            sharedTareUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description Relative standard uncertainty of its scale: the part `scale` of its uncertaintyParts. Default that of this test. Range: 0 to 100 %. */
            scaleUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description True when another scale weighed it, or the same one after another check: then no scale error cancels between the two. Default false. */
            fromAnotherScale?: boolean;
            /**
             * Format: date-time
             * @description When it was made; the answer calls it by that day.
             */
            occurredAt?: string;
            /** @description What it is called: the id of its record, or the owner's own name for it. */
            test?: string;
        };
        /** @description The effect of a wrong value. */
        EffectAnswer: {
            /** @description The rate that is really applied. */
            appliedRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Product too much over the stated area; negative when too little. */
            massOverArea?: components["schemas"]["MassQuantity"];
            /** @description Money for that product; negative when the crop gets too little. */
            totalCost?: components["schemas"]["Money"];
        };
        /** @description What is sown when something stays as it was. */
        EffectOfLot: {
            /** @description The rate that the controller is told. */
            setRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description The rate that falls. */
            appliedRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description How much that is above the rate for the same seeds, or above the set rate where that is unknown; negative when below. The interval is that of the predicted mass per revolution. */
            rateDeviation: components["schemas"]["MeasuredRatio"];
            /** @description Pure seeds per area; absent without kernel masses. */
            seedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description How much more seeds than before; negative for fewer. */
            seedsDeviation?: components["schemas"]["RatioQuantity"];
            /** @description Plants per area; absent without emergence and the germination of the new lot. */
            plants?: components["schemas"]["CountPerAreaQuantity"];
            /** @description How much more plants than before; absent unless both germinations are known. */
            plantsDeviation?: components["schemas"]["RatioQuantity"];
            /** @description Seed too much over the area, negative when too little; absent without an area. */
            massOverArea?: components["schemas"]["MassQuantity"];
            /** @description Cost of it; absent without an area and a price. */
            totalCost?: components["schemas"]["Money"];
        };
        /** @description One element. */
        ElementAnswer: {
            /** @description Its name. */
            name: string;
            /** @description It serves every rate at every ground speed. */
            fits: boolean;
            /** @description Room to the nearer limit of its speed: 25 % means that the nearer limit is a factor of 1.25 away; negative when it does not fit; absent without limits. */
            room?: components["schemas"]["RatioQuantity"];
            /** @description Lowest and highest rate at lowest and highest ground speed. */
            corners: components["schemas"]["CornerAnswer"][];
            /** @description For each rate above zero, the ground speeds inside the limits. */
            speedWindows: components["schemas"]["SpeedWindowAnswer"][];
            /** @description For each ground speed, the rates inside the limits. */
            rateWindows: components["schemas"]["RateWindowAnswer"][];
        };
        /** @description The displacements that keep a meter inside its speeds, and the elements at hand beside them. */
        ElementFitAnswer: {
            /** @description The outcome in a few sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description Whether an element fits: `fits` (the nearest at hand does), `none-fits` (none at hand, but another displacement would), `none-stated` (no element was stated) or `none-can-fit` (no displacement serves all rates at all speeds).
             * @example fits
             * @example none-fits
             * @example none-stated
             * @example none-can-fit
             */
            verdict: string;
            /** @description The displacements that serve every rate at every ground speed. */
            window: components["schemas"]["DisplacementWindowAnswer"];
            /** @description The part of the window that serves with the wanted probability; absent where nothing does. */
            innerWindow?: components["schemas"]["InnerWindowAnswer"];
            /** @description The combination that takes most product: it sets the lower end. */
            highestNeed: components["schemas"]["ProductNeedAnswer"];
            /** @description The combination that takes least product: it sets the upper end. */
            lowestNeed: components["schemas"]["ProductNeedAnswer"];
            /** @description What would open an empty window; absent when it is open. */
            waysOut?: components["schemas"]["WaysOutAnswer"];
            /** @description The elements at hand, nearest to the middle of the window first. */
            elements: components["schemas"]["FittingElementAnswer"][];
            /** @description Fill efficiency behind the window. */
            fillEfficiency: components["schemas"]["ExpectedRatio"];
            /** @description Parts of the spread of the window. */
            spreadParts: components["schemas"]["SpreadPart"][];
            /** @description What can hurt somebody who changes an element. Codes known today: `manual-first`, `unexpected-start`, `rotating-parts`, `product-dust`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. No element was tested here. Codes known today: `no-displacement-serves`, `fit-not-sure`, `outside-meter-window`, `near-meter-limit`, `more-than-the-element-holds`, `fill-unlike-expected`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        ElementFitAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["ElementFitAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description What a meter has to put down, how fast it may turn, and the metering elements at hand. */
        ElementFitRequest: {
            /** @description Bulk density of the product. Range: 10 to 10000 kg/m3. */
            bulkDensity: components["schemas"]["DensityOfProduct"];
            /** @description Width that the meter covers: the working width, or the meter's share of it. Range: 0.01 to 200 m. */
            coveredWidth: components["schemas"]["LengthQuantity"];
            /** @description Rates to be put down: one, the lowest and the highest, or all. Zero means off and is allowed beside others. Range: 0 to 100000 kg/ha. */
            rates: components["schemas"]["MassPerAreaQuantity"][];
            /** @description Ground speeds: one, the lowest and the highest, or all. Range: 0.01 to 100 km/h. */
            groundSpeeds: components["schemas"]["SpeedQuantity"][];
            /** @description Speeds that the meter has to keep to: of the element, of its drive and of its gears. */
            speedLimits: components["schemas"]["BothRotationLimits"];
            /** @description Share of the swept volume that product fills; a little above 100 % where it settles. Default 90 %: median fill efficiency of metering elements; judgement, no published source. Range: 1 to 200 %. */
            fillEfficiency?: components["schemas"]["RatioQuantity"];
            /** @description How sure the fill efficiency is. Default 15 %: spread of fill efficiency from element to element, standard deviation of its logarithm; judgement, no published source. Range: 0 to 100 %. */
            fillEfficiencySpread?: components["schemas"]["RatioQuantity"];
            /** @description Elements that could be fitted. Without any, only the displacements are found. */
            elements?: components["schemas"]["ElementToFit"][];
            /**
             * Format: double
             * @description Probability with which an element should keep the meter inside its speeds. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
        };
        /** @description A metering element: a roller, an auger. */
        ElementOfMachine: {
            /** @description What the owner calls it. */
            name: string;
            /**
             * @description How it carries product, and with it which volume its displacement means: `closed-pockets` that are struck off (their volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the volume between shaft and edge of the flight over one turn). Default not known.
             * @enum {string}
             */
            kind?: "closed-pockets" | "open-flutes" | "auger";
            /** @description Volume that one revolution displaces. No default. Range: above 0 and up to 1 m3. */
            displacementPerRevolution?: components["schemas"]["VolumeQuantity"];
            /** @description Limits of its speed. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /**
             * Format: int32
             * @description Pockets or flutes that discharge one after the other in one revolution. No default.
             */
            pocketsPerRevolution?: number;
        };
        /** @description A metering element with one product. Exactly one of massPerRevolution and measuredAt. */
        ElementOfMeter: {
            /** @description What the owner calls it. */
            name: string;
            /** @description Mass per revolution, the same at every speed. Give this or measuredAt. No default. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Mass per revolution measured at several meter speeds; straight lines are drawn between them. */
            measuredAt?: components["schemas"]["DeliveryPoint"][];
            /** @description Limits of its speed. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /**
             * @description How it carries product, and with it which volume its displacement means: `closed-pockets` (their volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the volume between shaft and edge of the flight over one turn). Default not known.
             * @enum {string}
             */
            kind?: "closed-pockets" | "open-flutes" | "auger";
            /** @description Volume that one revolution displaces; with the bulkDensity of the question it says what the mass per revolution can be. No default. Range: above 0 and up to 1 m3. */
            displacementPerRevolution?: components["schemas"]["VolumeQuantity"];
            /**
             * Format: int32
             * @description Pockets or flutes that discharge one after the other in one revolution; gives the spacing of discharges on the ground. No default.
             */
            pocketsPerRevolution?: number;
        };
        /** @description A metering element that could be fitted. */
        ElementToFit: {
            /** @description What the owner calls it. */
            name: string;
            /**
             * @description How it carries product, and with it which volume its displacement means: `closed-pockets` that are struck off (their volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the volume between shaft and edge of the flight over one turn). Default not known.
             * @enum {string}
             */
            kind?: "closed-pockets" | "open-flutes" | "auger";
            /** @description Volume that one revolution sweeps. Range: above 0 and up to 1000 L. */
            displacement: components["schemas"]["DisplacementOfElement"];
        };
        /** @description A number for the controller. */
        EntryAnswer: {
            /**
             * @description The form in which the controller takes it. Known today: `mass-per-revolution`, `mass-per-revolutions`, `mass-per-pulse`, `volume-per-revolution`, `mass-per-time`.
             * @example mass-per-revolution
             * @example mass-per-revolutions
             * @example mass-per-pulse
             * @example volume-per-revolution
             * @example mass-per-time
             */
            form: string;
            /**
             * Format: int32
             * @description Revolutions that the number stands for, in the form mass-per-revolutions.
             */
            revolutions?: number;
            /**
             * Format: double
             * @description The number to type in, already rounded to the controller's decimals.
             */
            value: number;
            /** @description Its unit. */
            unit: string;
            /** @description Relative error that the rounding causes. */
            roundingError: components["schemas"]["RatioQuantity"];
            /** @description The mass per revolution that the controller then uses: the value in force once typed in. */
            resultingMassPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
        };
        /** @description How a controller takes the number. */
        EntryOfSensor: {
            /**
             * @description The form: `pulses-per-distance`, `distance-per-pulse` or `wheel-circumference`.
             * @enum {string}
             */
            form: "pulses-per-distance" | "distance-per-pulse" | "wheel-circumference";
            /** @description Distance over which the controller counts pulses; only with that form. Default 100 m: a round distance that most fields have room for; judgement, no published source. Range: 1 to 10000 m. */
            distance?: components["schemas"]["LengthQuantity"];
            /**
             * @description Unit of the number; needed for the two forms that are lengths.
             * @enum {string}
             */
            unit?: "m" | "cm" | "mm" | "ft" | "in";
            /**
             * Format: int32
             * @description Decimals that the controller takes.
             */
            decimals: number;
        };
        /** @description Why a catch is left out. */
        Exclusion: {
            /** @description The reason, in the sender's words. */
            reason: string;
        };
        /** @description An expected mass per revolution. As likely too low as too high, with an interval that is longer upwards. */
        ExpectedMassPerRevolution: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Lower end of the coverage interval. */
            lower: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Upper end of the coverage interval. */
            upper: components["schemas"]["MassPerRevolutionQuantity"];
            /**
             * Format: double
             * @description Probability of the interval.
             */
            coverageProbability: number;
            /** @description Standard deviation of the natural logarithm: the relative standard uncertainty. */
            spread: components["schemas"]["RatioQuantity"];
        };
        /** @description An expected ratio. As likely too low as too high, with an interval that is longer upwards. */
        ExpectedRatio: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "%" | "1" | "ppm";
            /** @description Lower end of the coverage interval. */
            lower: components["schemas"]["RatioQuantity"];
            /** @description Upper end of the coverage interval. */
            upper: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Probability of the interval.
             */
            coverageProbability: number;
            /** @description Standard deviation of the natural logarithm: the relative standard uncertainty. */
            spread: components["schemas"]["RatioQuantity"];
        };
        /** @description Plants per area; with an interval where uncertainties were stated. */
        ExpectedStand: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "/m2" | "/ha" | "/ft2" | "/ac";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty?: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor?: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value, as far as the stated uncertainties go.
             */
            coverageProbability?: number;
        };
        /** @description An exact ratio of two whole numbers, both below 2^53. */
        FactorAnswer: {
            /**
             * Format: int64
             * @description Above the line.
             */
            numerator: number;
            /**
             * Format: int64
             * @description Below the line.
             */
            denominator: number;
        };
        /** @description Where the fan may stand for all products, and what its air carries. */
        FanAnswer: {
            /** @description Where to set the fan, in a sentence that can be shown as it is. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description `suits` when the planned setting, or without a plan at least one, suits all products; `change` when another than the planned one does; `none-suits` when no setting does.
             * @example suits
             * @example change
             * @example none-suits
             */
            verdict: string;
            /** @description Fan speeds that all products allow; absent when no product states any. */
            fanSpeeds?: components["schemas"]["FanSpeedWindow"];
            /** @description Air flows that all products allow; absent when no product states any. */
            airFlows?: components["schemas"]["AirFlowWindow"];
            /** @description What the air carries at the lowest and the highest rates and ground speeds. */
            loads: components["schemas"]["AirLoadAnswer"][];
        };
        /** @description One fan with the products that its air carries. All limits are yours, from the manual of the machine: the service knows no fan. */
        FanOfMachine: {
            /** @description Planned fan speed. No default. Range: above 0 and up to 10000 rpm. */
            fanSpeed?: components["schemas"]["RotationQuantity"];
            /** @description Planned air flow; gives the product in each cubic metre of air. No default. Range: above 0 and up to 1000000 m3/h. */
            airFlow?: components["schemas"]["VolumePerTimeQuantity"];
            /** @description The products that share the air. */
            products: components["schemas"]["ProductInAir"][];
        };
        /** @description The fan speeds that the limits of all products leave. */
        FanSpeedWindow: {
            /** @description At least one fan speed suits all products; when false, the minimum of one lies above the maximum of another. */
            exists: boolean;
            /** @description Slowest: the highest of the minima; absent without any. */
            minimum?: components["schemas"]["RotationQuantity"];
            /** @description The product that sets it. */
            minimumOf?: string;
            /** @description Fastest: the lowest of the maxima; absent without any. */
            maximum?: components["schemas"]["RotationQuantity"];
            /** @description The product that sets it. */
            maximumOf?: string;
        };
        /** @description A tank that was filled. */
        FilledTankOfProduct: {
            /** @description Mass filled in. Range: above 0 and up to 1000 t. */
            mass: components["schemas"]["MassQuantity"];
            /** @description Volume that it took. Range: above 0 and up to 1000 m3. */
            volume: components["schemas"]["VolumeQuantity"];
            /** @description Largest error of the mass. Default 1 %: largest error of the mass filled into a tank; judgement, no published source. Range: 0 to 50 %. */
            massTolerance?: components["schemas"]["RatioQuantity"];
            /** @description Largest error of the volume. Default 5 %: largest error of the volume of a tank filled by eye; judgement, no published source. Range: 0 to 50 %. */
            volumeTolerance?: components["schemas"]["RatioQuantity"];
        };
        /** @description Something the engine noticed. */
        FindingAnswer: {
            /** @description Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each. */
            code: string;
            /**
             * @description How much it matters: `note` is worth knowing, `warning` wants a look, `stop` forbids seeding on this answer.
             * @example note
             * @example warning
             * @example stop
             */
            severity: string;
            /** @description A sentence that can be shown as it is. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
            /** @description The meter it is about, where the question held several. */
            meter?: string;
        };
        /** @description The metering element that is fitted. With the bulk density of the product it says what a mass per revolution can be. */
        FittedElement: {
            /** @description What the owner calls it. */
            name?: string;
            /**
             * @description How it carries product, and with it which volume its displacement means: `closed-pockets` that are struck off (their volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the volume between shaft and edge of the flight over one turn). Default not known.
             * @enum {string}
             */
            kind?: "closed-pockets" | "open-flutes" | "auger";
            /** @description Volume that one revolution displaces. Range: above 0 and up to 1 m3. */
            displacementPerRevolution: components["schemas"]["VolumeQuantity"];
        };
        /** @description An element at hand. */
        FittingElementAnswer: {
            /** @description Its name. */
            name: string;
            /**
             * @description How it carries product; absent when it is not known. Known today: `closed-pockets`, `open-flutes`, `auger`.
             * @example closed-pockets
             * @example open-flutes
             * @example auger
             */
            kind?: string;
            /** @description Its displacement. */
            displacement: components["schemas"]["VolumeQuantity"];
            /** @description It keeps the meter inside its speeds at every rate and ground speed. */
            fits: boolean;
            /** @description Meter speed at the lowest rate and ground speed. */
            lowestMeterSpeed: components["schemas"]["RotationQuantity"];
            /** @description Meter speed at the highest rate and ground speed. */
            highestMeterSpeed: components["schemas"]["RotationQuantity"];
            /** @description By how much the lowest meter speed would have to rise; absent when it is high enough. */
            tooSlowBy?: components["schemas"]["RatioQuantity"];
            /** @description By how much the highest meter speed is above its limit; absent when it is not. */
            tooFastBy?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Natural logarithm of its displacement divided by the middle of the window: below zero smaller, above zero larger.
             */
            distanceFromMiddle: number;
            /**
             * Format: double
             * @description Probability that the meter stays inside its speeds at every rate and ground speed.
             */
            probability: number;
            /** @description Expected mass per revolution, as `volume-check` finds it. */
            expected: components["schemas"]["ExpectedMassPerRevolution"];
        };
        /** @description What a table says in a column of its sender. */
        GivenCell: {
            /** @description Name of the column. */
            column: string;
            /** @description Its text; where the rows of a question differ, all of them, separated by semicolons. */
            text: string;
        };
        /** @description The ground of a count, in one of four forms: rowLength with rowSpacing, length with width, area, or hoopDiameter. */
        GroundOfCount: {
            /** @description Length counted along each row. No default. Range: 0.01 to 1000 m. */
            rowLength?: components["schemas"]["LengthQuantity"];
            /** @description Distance from row to row; goes with rowLength. No default. Range: 0.01 to 10 m. */
            rowSpacing?: components["schemas"]["LengthQuantity"];
            /**
             * Format: int32
             * @description Rows counted side by side. Default 1: common practice.
             */
            rows?: number;
            /** @description One side of a frame. No default. Range: 0.01 to 1000 m. */
            length?: components["schemas"]["LengthQuantity"];
            /** @description The other side of it. No default. Range: 0.01 to 1000 m. */
            width?: components["schemas"]["LengthQuantity"];
            /** @description Area of a frame. No default. Range: 0.001 to 100000 m2. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description Inside diameter of a hoop. No default. Range: 0.01 to 10 m. */
            hoopDiameter?: components["schemas"]["LengthQuantity"];
            /** @description What the frame or hoop is called, for example a quarter of a square metre; it is checked and not computed with. No default. Range: 0.001 to 100000 m2. */
            calledArea?: components["schemas"]["AreaQuantity"];
        };
        /** @description One line of what happened. */
        HistoryItem: {
            /**
             * @description What it is: `catch-test`, `adoption` or `scale-check`.
             * @example catch-test
             * @example adoption
             * @example scale-check
             */
            kind: string;
            /** @description Id of the record; read it whole under the path of its kind. */
            id: string;
            /**
             * Format: date-time
             * @description When it happened, with the offset it was entered with.
             */
            occurredAt: string;
            /**
             * Format: date
             * @description The date of that in the machine's time zone; UTC for scale checks.
             */
            localDate: string;
            /**
             * Format: date-time
             * @description When the service received it.
             */
            receivedAt: string;
            /** @description Id of the machine. */
            machine?: string;
            /** @description Position of the meter. */
            meter?: string;
            /** @description Metering element. */
            element?: string;
            /** @description Setting of the meter. */
            setting?: string;
            /** @description Id of the product. */
            product?: string;
            /** @description Id of the lot. */
            lot?: string;
            /** @description Id of the scale. */
            scale?: string;
            /** @description Id of the plan. */
            plan?: string;
            /**
             * @description Verdict of a test; passed or failed for a scale check. Known today: `investigate`, `repeat`, `keep`, `adopt`, `passed`, `failed`.
             * @example investigate
             * @example repeat
             * @example keep
             * @example adopt
             * @example passed
             * @example failed
             */
            verdict?: string;
            /** @description The mass per revolution found or adopted. */
            massPerRevolution?: components["schemas"]["HistoryValue"];
            /** @description Change that a test found. */
            change?: components["schemas"]["RatioQuantity"];
            /** @description Span error that a scale check found. */
            scaleError?: components["schemas"]["RatioQuantity"];
            /** @description Who recorded it. */
            recordedBy?: string;
            /** @description The record that it took the place of. */
            supersedes?: string;
            /** @description Why it was adopted, or why it supersedes another. */
            reason?: string;
            /** @description Code of what spoke against an adopted number when it was typed in, several separated by semicolons; absent when nothing did. */
            despiteCode?: string;
            /** @description Why the number was adopted all the same: one reason for each code, in the same order. */
            despiteReason?: string;
            /** @description The record that took its place; absent while it stands. */
            supersededBy?: string;
        };
        /** @description A page of a list. */
        HistoryItemPage: {
            /** @description The records of this page. */
            items: components["schemas"]["HistoryItem"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A mass per revolution in the history. */
        HistoryValue: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /**
             * Format: double
             * @description Half width of the 95 % coverage interval; absent for an adoption.
             */
            expandedUncertainty?: number;
        };
        /** @description The displacements, known exactly, that serve with a probability. */
        InnerWindowAnswer: {
            /** @description Smallest. */
            lower: components["schemas"]["VolumeQuantity"];
            /** @description Largest. */
            upper: components["schemas"]["VolumeQuantity"];
            /**
             * Format: double
             * @description The probability.
             */
            coverageProbability: number;
        };
        /** @description A key as the service keeps it: everything but its secret. */
        KeyAnswer: {
            /** @description Id, a UUID of version 7. */
            id: string;
            /** @description What the text of the key begins with. It is no secret; it says which key a text belongs to. */
            start: string;
            /** @description Id of the workspace that it opens. */
            workspace: string;
            /** @description Who or what uses it. */
            name: string;
            /** @description What it may do: `calculate`, `read`, `write`, `admin`; `operator` for keys that the command of the service made for whoever runs the installation. */
            scopes: string[];
            /**
             * @description `live`, `expired` or `revoked`.
             * @example live
             * @example expired
             * @example revoked
             */
            state: string;
            /**
             * Format: date-time
             * @description When it was made (UTC).
             */
            createdAt: string;
            /** @description Id of the key that made it; absent when the command of the service did. */
            createdBy?: string;
            /**
             * Format: date-time
             * @description From when on it opens nothing (UTC); absent for never.
             */
            expiresAt?: string;
            /**
             * Format: date-time
             * @description When it was revoked (UTC); absent while it was not.
             */
            revokedAt?: string;
            /** @description Why it was revoked. */
            revokedBecause?: string;
            /** @description Id of the key that it takes the place of. */
            replaces?: string;
            /** @description Id of the key that takes its place. */
            replacedBy?: string;
            /**
             * Format: date-time
             * @description When it was used last (UTC), to about a minute; absent for never.
             */
            lastUsedAt?: string;
        };
        /** @description A page of a list. */
        KeyAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["KeyAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A new key. */
        KeyRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes one. */
            id?: string;
            /** @description Who or what uses the key, so that it can be told apart later. */
            name: string;
            /** @description What the key may do; none implies another. `calculate`: calculations, which store nothing. `read`: records and what follows from them. `write`: storing records. `admin`: keys and audit of the workspace. */
            scopes: ("calculate" | "read" | "write" | "admin")[];
            /**
             * Format: date-time
             * @description From when on it opens nothing, RFC 3339. Default never. A key that expires makes none that outlives it, so it has to give this.
             */
            expiresAt?: string;
        };
        /** @description One reading of a known mass. */
        KnownMassReadingOfCheck: {
            /** @description The known mass. Range: above 0 and up to 1000 t. */
            known: components["schemas"]["MassQuantity"];
            /** @description What the scale showed. Range: 0 to 1000 t. */
            indicated: components["schemas"]["MassQuantity"];
            /** @description Standard uncertainty of the known mass. Default 0: judgement, known masses are far better than the scale. Range: 0 to 1000 kg. */
            knownUncertainty?: components["schemas"]["MassQuantity"];
        };
        /** @description The span error of a scale. */
        KnownScaleErrorOfTest: {
            /** @description Indicated minus true, divided by true: positive when the scale shows too much. Range: -20 to 20 %. */
            error: components["schemas"]["RatioQuantity"];
            /** @description Standard uncertainty of that error, relative. Range: 0 to 20 %. */
            standardUncertainty: components["schemas"]["RatioQuantity"];
            /** @description True when the scale failed that check: then nothing that it weighed is to be relied on. Default false. */
            checkFailed?: boolean;
        };
        /** @description A share learned from the counts and from what was expected before them. */
        LearnedAnswer: {
            /**
             * @description Which share: `survival` or `emergence`.
             * @example survival
             * @example emergence
             */
            reading: string;
            /** @description Its mean; the next prior, with the standard deviation below and what seasons add to it. */
            mean: components["schemas"]["RatioQuantity"];
            /** @description Its standard deviation. */
            standardDeviation: components["schemas"]["RatioQuantity"];
            /** @description Lower end of its interval. */
            lower: components["schemas"]["RatioQuantity"];
            /** @description Upper end of its interval. */
            upper: components["schemas"]["RatioQuantity"];
            /** @description How much of it the counts carried, as seeds looked at; the prior carried the rest. */
            weightOfCounts: components["schemas"]["RatioQuantity"];
        };
        /** @description A length. */
        LengthQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "m" | "cm" | "mm" | "ft" | "in";
        };
        /** @description A mistake that would explain a test. */
        LikelyMistakeAnswer: {
            /** @description Stable code; a code that has been checked can be sent back in ruledOutMistakes. */
            code: string;
            /** @description JSON pointer to the catch in the question; absent when it would be in the whole test. */
            catch?: string;
            /**
             * Format: double
             * @description Probability that it happened, after the masses were looked at. Rests on prior probabilities that are judgement.
             */
            probability: number;
            /**
             * Format: double
             * @description How many times better it explains the masses than an ordinary change of the meter does; 1000000000 at most.
             */
            bayesFactor: number;
            /** @description The masses alone do not tell it from the others of this list that are marked so too: do the check of each. */
            cannotBeToldApart: boolean;
            /** @description What was seen and how the mistake explains it. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
            /** @description The one thing to look at. */
            check: string;
        };
        /** @description A publication that states limits. */
        LimitSourceAnswer: {
            /** @description Its key in kebab case; `stated` for a limit of the question. */
            key: string;
            /** @description Who publishes it. */
            publisher: string;
            /** @description Its title or subject. */
            title: string;
            /**
             * Format: int32
             * @description Year of the edition; absent when the copy that was read shows none.
             */
            year?: number;
            /** @description The place that it is for. */
            region: string;
            /** @description Where it was read. */
            address?: string;
        };
        /** @description A limit from the caller's own guidance. */
        LocalLimitWithSeed: {
            /** @description Where it is printed; answers name it. */
            source: string;
            /**
             * @description What it counts.
             * @enum {string}
             */
            nutrient: "N" | "urea-N" | "urea-and-sulfate-N" | "N-beside-phosphates" | "P2O5" | "K2O" | "N-plus-K2O" | "S" | "all" | "phosphate-N";
            /** @description The most that it allows with the seed. Range: 0 to 100000 kg/ha. */
            rate: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description A lot as stored. */
        LotAnswer: {
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Id of the product. */
            product: string;
            /** @description Thousand-kernel mass as sown, treatment included. */
            thousandKernelMass?: components["schemas"]["MassPerThousandQuantity"];
            /** @description Germination. */
            germination?: components["schemas"]["RatioQuantity"];
            /** @description Purity. */
            purity?: components["schemas"]["RatioQuantity"];
            /** @description Bulk density; goes before that of the product. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description Moisture by mass. */
            moisture?: components["schemas"]["RatioQuantity"];
            /** @description Treatment, in the owner's words; none when absent. */
            treatment?: string;
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
        };
        /** @description A page of a list. */
        LotAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["LotAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description What is known of a lot. The more, the surer the answer. */
        LotOfChange: {
            /** @description What the owner calls it. */
            name?: string;
            /** @description Mass of a thousand kernels as sown, treatment included. No default. Range: above 0 and up to 5000 g/1000. */
            thousandKernelMass?: components["schemas"]["MassPerThousandQuantity"];
            /** @description Bulk density as it lies in the tank. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["DensityOfLot"];
            /** @description Share of the pure seeds that germinate. No default. Range: above 0 and up to 100 %. */
            germination?: components["schemas"]["RatioQuantity"];
            /** @description Share of the mass that is pure seed. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %. */
            purity?: components["schemas"]["RatioQuantity"];
            /** @description Treatment in the owner's words; leave it out for untreated seed. Two lots have the same treatment when the words are the same, or both have none. */
            treatment?: string;
        };
        /** @description A reason for when to test. */
        LotReason: {
            /** @description Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each. */
            code: string;
            /** @description A sentence that can be shown as it is. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
        };
        /** @description A lot of a product: a delivery, a seed lot, a treatment of its own. */
        LotRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired?: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Id of the product. */
            product: string;
            /** @description Thousand-kernel mass as sown, treatment included. No default. Range: above 0 and up to 5000 g/1000. */
            thousandKernelMass?: components["schemas"]["MassPerThousandQuantity"];
            /** @description Germination. No default. Range: above 0 and up to 100 %. */
            germination?: components["schemas"]["RatioQuantity"];
            /** @description Purity. No default. Range: above 0 and up to 100 %. */
            purity?: components["schemas"]["RatioQuantity"];
            /** @description Bulk density; goes before that of the product. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description Moisture by mass. No default. Range: 0 to 100 %. */
            moisture?: components["schemas"]["RatioQuantity"];
            /** @description Treatment, in the owner's words; none when absent. */
            treatment?: string;
        };
        /** @description One part of the uncertainty of a prediction. */
        LotUncertainty: {
            /**
             * @description Where it comes from. Known today: `value-in-force`, `density-before`, `density-of-new-lot`, `unknown-density`, `day-to-day`, `fill-of-lots`, `fill-of-treatments`.
             * @example value-in-force
             * @example density-before
             * @example density-of-new-lot
             * @example unknown-density
             * @example day-to-day
             * @example fill-of-lots
             * @example fill-of-treatments
             */
            source: string;
            /** @description Standard uncertainty, relative; of unknown-density and the two fills the scale of a t distribution with 3 degrees of freedom. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description A machine as stored. */
        MachineAnswer: {
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Time zone by its IANA name, for example Europe/Vienna: days and months in answers are those of this zone. Default Etc/UTC. */
            timeZone?: string;
            /** @description Width that the machine works. */
            workingWidth?: components["schemas"]["LengthQuantity"];
            /** @description Distance between two rows. */
            rowSpacing?: components["schemas"]["LengthQuantity"];
            /** @description Its openers. */
            opener?: string;
            /** @description Width over which an opener spreads seed and fertilizer, measured in the field; at most the row spacing. */
            seedRowWidth?: components["schemas"]["LengthQuantity"];
            /** @description How its meters are driven: `separate` drives (the default) or a `shared-shaft`. */
            drive?: string;
            /** @description Its tanks. */
            tanks?: components["schemas"]["TankOfMachine"][];
            /** @description Its meters, each under one position. */
            meters: components["schemas"]["MeterOfMachine"][];
            /** @description What a test disturbs on this machine and has to be put back, in the owner's words. */
            restorePoints?: components["schemas"]["RestorePoint"][];
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
        };
        /** @description A page of a list. */
        MachineAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["MachineAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A seeding machine with its tanks, meters and what a test disturbs on it. */
        MachineRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired?: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Time zone by its IANA name, for example Europe/Vienna: days and months in answers are those of this zone. Default Etc/UTC. */
            timeZone?: string;
            /** @description Width that the machine works. No default. Range: above 0 and up to 200 m. */
            workingWidth?: components["schemas"]["LengthQuantity"];
            /** @description Distance between two rows. No default. Range: above 0 and up to 5 m. */
            rowSpacing?: components["schemas"]["LengthQuantity"];
            /**
             * @description Its openers.
             * @enum {string}
             */
            opener?: "double-disc" | "disc" | "knife" | "spoon" | "hoe" | "sweep";
            /** @description Width over which an opener spreads seed and fertilizer, measured in the field; at most the row spacing. No default. Range: above 0 and up to 5 m. */
            seedRowWidth?: components["schemas"]["LengthQuantity"];
            /**
             * @description How its meters are driven: `separate` drives (the default) or a `shared-shaft`.
             * @enum {string}
             */
            drive?: "separate" | "shared-shaft";
            /** @description Its tanks. */
            tanks?: components["schemas"]["TankOfMachine"][];
            /** @description Its meters, each under one position. */
            meters: components["schemas"]["MeterOfMachine"][];
            /** @description What a test disturbs on this machine and has to be put back, in the owner's words. */
            restorePoints?: components["schemas"]["RestorePoint"][];
        };
        /** @description The margin of a rate over the one at the mean. */
        MarginAnswer: {
            /** @description The margin over the rate at the mean. */
            relative: components["schemas"]["RatioQuantity"];
            /** @description Extra seeds per area. */
            seedsPerArea: components["schemas"]["CountPerAreaQuantity"];
            /** @description Extra mass per area; absent without a kernel mass. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description What the extra seed costs on one unit of area; absent without price and kernel mass. */
            costPerArea?: components["schemas"]["CostPerUnit"];
            /** @description What the extra seed costs on the whole area; absent without it. */
            totalCost?: components["schemas"]["Money"];
        };
        /** @description An application rate by mass. */
        MassPerAreaQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/ha" | "g/m2" | "lb/ac";
        };
        /** @description The mass a meter delivers per revolution. */
        MassPerRevolutionQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
        };
        /** @description A mass per revolution to be checked. */
        MassPerRevolutionToCheck: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Its standard uncertainty. Default 2 %: default of a value in force: judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description True when the controller uses it now; otherwise it was measured. Default false. */
            inForce?: boolean;
        };
        /** @description The mass of a thousand kernels. */
        MassPerThousandQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "g/1000";
        };
        /** @description A mass flow. */
        MassPerTimeQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/min" | "g/s" | "lb/min";
        };
        /** @description A mass. */
        MassQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg" | "g" | "t" | "lb" | "oz" | "ton-us" | "ton-uk";
        };
        /** @description A bulk density with its uncertainty; names as open metrology formats use them. */
        MeasuredBulkDensity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/hL" | "kg/m3" | "kg/L" | "lb/ft3" | "lb/bu-us" | "lb/bu-imp";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
            /**
             * Format: double
             * @description Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.
             */
            degreesOfFreedom?: number;
        };
        /** @description A measured length with its uncertainty. */
        MeasuredLength: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "m" | "cm" | "mm" | "ft" | "in";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
            /**
             * Format: double
             * @description Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its own factor.
             */
            degreesOfFreedom?: number;
        };
        /** @description A measured rate with its uncertainty. */
        MeasuredMassPerArea: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/ha" | "g/m2" | "lb/ac";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
            /**
             * Format: double
             * @description Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its own factor.
             */
            degreesOfFreedom?: number;
        };
        /** @description A measured mass per revolution with its uncertainty; names as open metrology formats use them. */
        MeasuredMassPerRevolution: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
            /**
             * Format: double
             * @description Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage factor is not looked up with them: the scatter of the catches and the parts known beforehand are expanded each with its own factor.
             */
            degreesOfFreedom?: number;
        };
        /** @description A measured number of pulses per distance with its uncertainty. */
        MeasuredPulsesPerDistance: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "pulses/100m";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
            /**
             * Format: double
             * @description Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its own factor.
             */
            degreesOfFreedom?: number;
        };
        /** @description A measured ratio with its uncertainty; names as open metrology formats use them. */
        MeasuredRatio: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "%" | "1" | "ppm";
            /**
             * Format: double
             * @description Half width of the coverage interval, in the unit beside it.
             */
            expandedUncertainty: number;
            /**
             * Format: double
             * @description Factor by which the standard uncertainty was expanded.
             */
            coverageFactor: number;
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
            /**
             * Format: double
             * @description Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage factor is not looked up with them: the scatter of the catches and the parts known beforehand are expanded each with its own factor.
             */
            degreesOfFreedom?: number;
        };
        /** @description What one meter puts down. */
        MeterOfFieldPlan: {
            /** @description Position of the meter on the machine. */
            meter: string;
            /** @description Metering element fitted. */
            element: string;
            /** @description Setting of the meter, in the owner's words, for example a gear; none when absent. */
            setting?: string;
            /** @description Id of the product. */
            product: string;
            /** @description Id of the lot. */
            lot?: string;
            /** @description Target rate; for a variable rate, the one to be tested at. Leave it out where the rate follows from stand, or from the nutrients of the plan. No default. Range: above 0 and up to 100000 kg/ha. */
            targetRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The stand that is wanted; with the lot, the target rate follows from it. */
            stand?: components["schemas"]["StandOfPlan"];
            /** @description The product is laid in the seed row, with the seed; needs the seedRow of the plan. Default false. */
            withSeed?: boolean;
            /** @description A predicted mass per revolution, used while no value is in force. No default. Range: above 0 and up to 1000 kg/rev. */
            startValue?: components["schemas"]["ReferenceOfTest"];
        };
        /** @description A meter at its place on the machine. */
        MeterOfMachine: {
            /** @description Where it is, in the owner's words, for example front; unique on the machine. */
            position: string;
            /** @description Name of the tank that feeds it. */
            tank?: string;
            /** @description Width that it covers. Range: above 0 and up to 200 m. */
            coveredWidth: components["schemas"]["LengthQuantity"];
            /**
             * Format: int32
             * @description Outlets that it feeds. No default.
             */
            outlets?: number;
            /** @description Metering elements it can be fitted with; names are unique within the meter. At most 1280 on all meters of the machine together. */
            elements: components["schemas"]["ElementOfMachine"][];
            /** @description Limits of its speed, for elements that do not name their own. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /** @description Smallest step of its revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            counterResolution?: components["schemas"]["RevolutionsQuantity"];
            /** @description Sensor pulses per revolution. No default. Range: above 0 and up to 1000000 pulses/rev. */
            pulsesPerRevolution?: components["schemas"]["PulsesPerRevolutionQuantity"];
            /** @description Meter revolutions per turn of the crank or wheel. No default. Range: 0.0001 to 10000. */
            meterRevolutionsPerTurn?: components["schemas"]["RatioQuantity"];
            /** @description The form in which its controller takes the value. */
            controllerEntry?: components["schemas"]["ControllerEntryOfTest"];
        };
        /** @description One meter of a run. Exactly one of valueInForce and startValue. */
        MeterOfPlan: {
            /** @description What the owner calls the meter. */
            meter: string;
            /** @description What it meters. */
            product: string;
            /**
             * @description How the product flows: `free-flowing`, `small-seed` or `dusty`. Default: small-seed when even the longest run does not bring 6.8 kg, else free-flowing.
             * @enum {string}
             */
            material?: "free-flowing" | "small-seed" | "dusty";
            /** @description Width that the meter covers. Range: above 0 and up to 200 m. */
            coveredWidth: components["schemas"]["LengthQuantity"];
            /** @description Target rate; for a variable rate, the one to be tested at. Range: above 0 and up to 100000 kg/ha. */
            targetRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Bulk density of the product; needed where a container of known volume bounds the catch. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description The metering element that is fitted; with the bulk density it says what the value to plan with can be. */
            fittedElement?: components["schemas"]["FittedElement"];
            /** @description The mass per revolution that the controller uses now. Default of its `relativeUncertainty` 2 %: default of a value in force: judgement, no published source. Range: above 0 and up to 1000 kg/rev. */
            valueInForce?: components["schemas"]["ReferenceOfTest"];
            /** @description A predicted mass per revolution where none is in force yet. Default of its `relativeUncertainty` 10 %: a predicted start value may be 20 % off; judgement, no published source. Range: above 0 and up to 1000 kg/rev. */
            startValue?: components["schemas"]["ReferenceOfTest"];
            /** @description Limits of the meter speed. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /** @description Its own container. */
            container?: components["schemas"]["ContainerOfPlan"];
            /** @description Repeatability of one catch (standard deviation). Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev; with 2.9 % in place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
            repeatability?: components["schemas"]["RatioQuantity"];
            /**
             * Format: int32
             * @description Pockets or flutes that discharge one after the other in one revolution, where known. No default.
             */
            pocketsPerRevolution?: number;
        };
        /** @description One meter of the plan. */
        MeterPlanAnswer: {
            /** @description The meter. */
            meter: string;
            /** @description What it meters. */
            product: string;
            /** @description Net mass to catch. */
            catchMass: components["schemas"]["MassQuantity"];
            /** @description Revolutions to turn; whole, except on a shared shaft. */
            revolutions: components["schemas"]["RevolutionsQuantity"];
            /** @description Ground speed to simulate: the one of the question where it does, else the nearest that keeps the meter within its limits and the run long enough. */
            simulatedSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Run time at the simulated ground speed. */
            runTime: components["schemas"]["TimeQuantity"];
            /** @description Meter speed at the simulated ground speed. */
            meterSpeed: components["schemas"]["RotationQuantity"];
            /** @description The meter speed is inside its limits. */
            withinLimits: boolean;
            /** @description Meter speeds at the ends of the working range; absent when it was not stated. */
            speedChecks?: components["schemas"]["SpeedCheckAnswer"][];
            /** @description Share of the container's volume that the catch fills; absent without volume. */
            containerFill?: components["schemas"]["RatioQuantity"];
            /** @description Area that the catch would have covered. */
            simulatedArea: components["schemas"]["AreaQuantity"];
            /**
             * Format: int32
             * @description Catches for the wanted precision; absent when no number of catches reaches it.
             */
            catches?: number;
            /** @description Expanded uncertainty to expect of that many catches, relative; of one catch when none reach the wanted one. */
            expectedPrecision: components["schemas"]["RatioQuantity"];
            /** @description Volume of a container that would allow the shortest run; absent where the run is long enough or another bound acts. */
            containerForLongRun?: components["schemas"]["VolumeQuantity"];
            /**
             * Format: int32
             * @description Catches that together run as long as the shortest run; absent where one catch does.
             */
            catchesForLongRun?: number;
            /** @description The bound that acts. */
            limitedBy: components["schemas"]["BoundAnswer"];
            /** @description Every bound, acting or not. */
            bounds: components["schemas"]["BoundAnswer"][];
        };
        /** @description Rates and set-up of one meter. */
        MeterSetUpAnswer: {
            /** @description Position of the meter. */
            meter: string;
            /** @description The element that the plan names. */
            element: string;
            /** @description Name of the product. */
            product: string;
            /** @description Name of the lot; absent when the plan names none. */
            lot?: string;
            /** @description Rate to be put down; absent while it cannot be told. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /**
             * @description Where the rate comes from: the plan's own `target-rate`, its `stand`, or its `nutrients`.
             * @example target-rate
             * @example stand
             * @example nutrients
             */
            rateFrom: string;
            /** @description How the rate follows from the stand; absent otherwise. */
            seedingRate?: components["schemas"]["SeedingRateAnswer"];
            /** @description The masses per revolution behind meterSpeed, one for each element of which something is known. */
            values: components["schemas"]["ValueOfElement"][];
            /** @description Meter speeds, windows and the best element; absent without a rate or a mass per revolution, and at a rate of zero. */
            meterSpeed?: components["schemas"]["MeterSpeedAnswer"];
            /** @description What it means that the lot is another one than when the value in force was adopted; absent when it is the same, when one of the two is not known, and at a rate of zero. */
            newLot?: components["schemas"]["NewLotAnswer"];
        };
        /** @description Meter speeds, windows and the order of the elements. */
        MeterSpeedAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description `fits` when the best element serves every rate at every ground speed, otherwise `none-fits`; `fan-unsuited` when an element does, but the fan has to be set otherwise.
             * @example fits
             * @example fan-unsuited
             * @example none-fits
             */
            verdict: string;
            /** @description The elements, best first. */
            elements: components["schemas"]["ElementAnswer"][];
            /** @description Field capacity at each ground speed. */
            capacity: components["schemas"]["CapacityAnswer"][];
            /** @description The air stream; absent when none was asked about. */
            fan?: components["schemas"]["FanAnswer"];
            /** @description What can hurt somebody who sets the fan; empty without one. Codes known today: `manual-first`, `unexpected-start`, `stored-pressure`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `unusual-field-efficiency`, `outside-fan-window`, `near-fan-limit`, `no-common-fan-window`, `fan-limit-not-checked`, `near-meter-limit`, `outside-measured-speeds`, `outside-meter-window`, `more-than-the-element-holds`, `fill-unlike-expected`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        MeterSpeedAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["MeterSpeedAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description What is asked of a meter, and the metering elements it can be fitted with. */
        MeterSpeedRequest: {
            /** @description Width that the meter covers. Range: 0.01 to 200 m. */
            coveredWidth: components["schemas"]["LengthQuantity"];
            /** @description Rates to be put down: one, or those of all zones of a variable-rate field. Zero means off and is allowed beside others. Range: 0 to 100000 kg/ha. */
            rates: components["schemas"]["MassPerAreaQuantity"][];
            /** @description Ground speeds: one, or the slowest and the fastest of the field. Range: 0.01 to 100 km/h. */
            groundSpeeds: components["schemas"]["SpeedQuantity"][];
            /** @description Bulk density of the product; with the displacement of an element it says what its mass per revolution can be. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description The metering elements that the machine has for this meter. */
            elements: components["schemas"]["ElementOfMeter"][];
            /** @description Limits of the meter speed for elements that do not name their own. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /** @description Width that the machine works, for the area per hour. Default the covered width: judgement, no overlap between passes. Range: 0.01 to 200 m. */
            workingWidth?: components["schemas"]["LengthQuantity"];
            /** @description Share of the time spent working at that width and speed. Default 70 %: from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %. Range: 1 to 100 %. */
            fieldEfficiency?: components["schemas"]["RatioQuantity"];
            /** @description Turns and refills, from which the field efficiency follows at each ground speed. Give this or fieldEfficiency. */
            stops?: components["schemas"]["StopsInField"];
            /** @description Area to be worked; gives the time in the field. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description Time in the field on one day; gives the area of a day. No default. Range: above 0 and up to 24 h. */
            timePerDay?: components["schemas"]["TimeQuantity"];
            /** @description The air stream that carries this product and others. */
            fan?: components["schemas"]["FanOfMachine"];
        };
        /** @description Something that keeps a part of the set-up from being computed. */
        MissingOfPlan: {
            /** @description The member of the plan that it is about. */
            pointer: string;
            /**
             * @description What it is: a `missing-value` of the plan or of a record that it names, a `record-at-odds` with the plan by now, a question that a calculation `refused`, or something that `no-published-number` settles, so that somebody has to be asked.
             * @example missing-value
             * @example record-at-odds
             * @example refused
             * @example no-published-number
             */
            kind: string;
            /** @description What is missing or wrong, and what to do. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
        };
        /** @description A published study of density against moisture. */
        MoistureAnswer: {
            /** @description Moisture at the start. */
            from: components["schemas"]["RatioQuantity"];
            /** @description Moisture at the end. */
            to: components["schemas"]["RatioQuantity"];
            /**
             * @description What moisture is a share of: `dry` matter or the `wet` whole.
             * @example dry
             * @example wet
             */
            basis: string;
            /** @description Bulk density at the start. */
            densityFrom: components["schemas"]["BulkDensityQuantity"];
            /** @description Bulk density at the end. */
            densityTo: components["schemas"]["BulkDensityQuantity"];
            /** @description Relative change of the density for each percentage point of moisture, on average. */
            changePerPoint: components["schemas"]["RatioQuantity"];
            /** @description The publication. */
            source: string;
        };
        /** @description An amount of money. */
        Money: {
            /**
             * Format: double
             * @description The amount.
             */
            value: number;
            /** @description ISO 4217 currency code. */
            currency: string;
        };
        /** @description A new key. */
        NewKeyAnswer: {
            /** @description Id, a UUID of version 7. */
            id: string;
            /** @description What the text of the key begins with. It is no secret; it says which key a text belongs to. */
            start: string;
            /** @description Id of the workspace that it opens. */
            workspace: string;
            /** @description Who or what uses it. */
            name: string;
            /** @description What it may do: `calculate`, `read`, `write`, `admin`; `operator` for keys that the command of the service made for whoever runs the installation. */
            scopes: string[];
            /**
             * @description `live`, `expired` or `revoked`.
             * @example live
             * @example expired
             * @example revoked
             */
            state: string;
            /**
             * Format: date-time
             * @description When it was made (UTC).
             */
            createdAt: string;
            /** @description Id of the key that made it; absent when the command of the service did. */
            createdBy?: string;
            /**
             * Format: date-time
             * @description From when on it opens nothing (UTC); absent for never.
             */
            expiresAt?: string;
            /**
             * Format: date-time
             * @description When it was revoked (UTC); absent while it was not.
             */
            revokedAt?: string;
            /** @description Why it was revoked. */
            revokedBecause?: string;
            /** @description Id of the key that it takes the place of. */
            replaces?: string;
            /** @description Id of the key that takes its place. */
            replacedBy?: string;
            /**
             * Format: date-time
             * @description When it was used last (UTC), to about a minute; absent for never.
             */
            lastUsedAt?: string;
            /** @description The key itself. It is shown in this answer only; a repetition of the request does not show it again. */
            key?: string;
        };
        /** @description What another lot or treatment changes. */
        NewLotAnswer: {
            /** @description The outcome in a few sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description When to make a catch test: `test-now` (before sowing this lot), `test-at-next-fill` or `no-test-needed` (not because of this lot).
             * @example test-now
             * @example test-at-next-fill
             * @example no-test-needed
             */
            verdict: string;
            /** @description Why. Codes known today: `density-unknown`, `density-differs`, `other-lot`, `treatment-changed`, `kernels-of-one-lot-differ`, `nothing-changed`, `within-tolerance`, `within-tolerance-not-shown`. */
            reasons: components["schemas"]["LotReason"][];
            /** @description The mass per revolution expected of the new lot, with its interval: the value in force times the ratio of the bulk densities. */
            predictedMassPerRevolution: components["schemas"]["MeasuredMassPerRevolution"];
            /** @description How much that is above the value in force; negative when below. */
            predictedChange: components["schemas"]["RatioQuantity"];
            /** @description Where its uncertainty comes from: relative, their squares add up. */
            uncertaintyParts: components["schemas"]["LotUncertainty"][];
            /**
             * Format: double
             * @description Probability that the value in force is within the tolerance of the truth.
             */
            probabilityWithinTolerance: number;
            /**
             * Format: double
             * @description Probability that the truth is within the tolerance of the predicted value, were that typed in.
             */
            probabilityWithinToleranceOfPrediction: number;
            /** @description What a catch plan takes as startValue. */
            startValue: components["schemas"]["StartValueOfLot"];
            /** @description The rate for the new lot; absent when nothing says how many seeds there were. */
            rate?: components["schemas"]["RateOfLot"];
            /** @description What is sown when the rate is set anew, where it can be, and the value in force stays; absent without a rate. */
            effectIfValueStays?: components["schemas"]["EffectOfLot"];
            /** @description What is sown when neither rate nor value is touched; absent when the rate cannot be computed. */
            effectIfNothingIsChanged?: components["schemas"]["EffectOfLot"];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed beyond the verdict. Codes known today: `rate-not-recomputed`, `densities-far-apart`, `germination-changed`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What can hurt a person. The product label goes first. Codes known today: `treated-seed`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        NewLotAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["NewLotAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A value in force, the lot behind it, and the lot that goes into the tank now. */
        NewLotRequest: {
            /** @description The mass per revolution that the controller uses now. Range: above 0 and up to 1000 kg/rev. */
            valueInForce: components["schemas"]["ValueOfLotBefore"];
            /** @description The lot with which that value was found. */
            lotBefore: components["schemas"]["LotOfChange"];
            /** @description The lot that goes into the tank now. */
            newLot: components["schemas"]["LotOfChange"];
            /** @description Both are the same lot: another delivery of it, or it was treated meanwhile. Default false. */
            sameLot?: boolean;
            /** @description Rate by mass that was sown with the lot before; with both kernel masses it gives the rate for the same seeds. Give this or seedsPerArea. No default. Range: above 0 and up to 100000 kg/ha. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Pure seeds per area that are to stay the same. No default. Range: above 0 and up to 100000 /m2. */
            seedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Field emergence: plants per seed that can germinate. With the germination of the new lot it gives plants. No default. Range: above 0 and up to 100 %. */
            emergence?: components["schemas"]["RatioQuantity"];
            /** @description Area to be sown with the new lot; gives mass and cost. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description Price of the new lot. */
            price?: components["schemas"]["Price"];
            /** @description Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %. */
            tolerance?: components["schemas"]["RatioQuantity"];
            /** @description Standard deviation of the mass per revolution from day to day. Default 1 %: default until the series has five tests; judgement, no published source. Range: above 0 and up to 50 %. */
            dayToDay?: components["schemas"]["RatioQuantity"];
            /** @description How far the fill of the element changes from lot to lot beyond density, as the scale of a t distribution. Default 4 %: another lot fills the element differently even at the same density; judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %. */
            fillChangeOfLot?: components["schemas"]["RatioQuantity"];
            /** @description The same with another treatment. Default 4 %: a coating changes friction; judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %. */
            fillChangeOfTreatment?: components["schemas"]["RatioQuantity"];
            /** @description How far bulk density changes where it is not known of both lots, as the scale of a t distribution. Default 7 % with a new lot; judgement, 3 degrees of freedom, no published source. Default 2 % with another delivery of the same lot; judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %. */
            unknownDensityChange?: components["schemas"]["RatioQuantity"];
        };
        /** @description One nutrient: asked for, there already, brought, left over. */
        NutrientLine: {
            /**
             * @description The nutrient in the form of all amounts beside it: that of its target, else the first one named. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
             * @example N
             * @example P2O5
             * @example P
             * @example K2O
             * @example K
             * @example S
             * @example SO4-S
             * @example SO3
             * @example SO4
             */
            nutrient: string;
            /** @description The amount of its target; absent without one. */
            target?: components["schemas"]["MassPerAreaQuantity"];
            /**
             * @description How the target is meant; absent without one. Known today: `at-least`, `exactly`, `at-most`.
             * @example at-least
             * @example exactly
             * @example at-most
             */
            kind?: string;
            /** @description What is there already. */
            credits: components["schemas"]["MassPerAreaQuantity"];
            /** @description What products of fixed rate bring. */
            fromFixedRates: components["schemas"]["MassPerAreaQuantity"];
            /** @description What the products bring whose rates were computed. */
            fromComputedRates: components["schemas"]["MassPerAreaQuantity"];
            /** @description All of it together. */
            total: components["schemas"]["MassPerAreaQuantity"];
            /** @description The total less the target: what remains over, or below zero what is missing (of an at-most target, the room left); absent without a target. */
            surplus?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The target is met; true without one. */
            met: boolean;
            /** @description What one more mass unit of the target would cost with these products while every limit stays: the price of this nutrient here. Zero where enough is there anyway, below zero where more of it would save money. Absent without prices, without a target, for an at-most target, or when no more can be had. */
            costOfNextUnit?: components["schemas"]["CostPerUnit"];
            /** @description What the limit of this nutrient (most, or an at-most target) costs: what one more mass unit allowed would save. Zero where the limit does not bind. Absent without prices, without a limit, or when not all targets are met. */
            costOfLimit?: components["schemas"]["CostPerUnit"];
        };
        /** @description A nutrient with the seed. */
        NutrientLoadAnswer: {
            /**
             * @description What is counted. Known today: `N`, `urea-N`, `urea-and-sulfate-N`, `N-beside-phosphates`, `P2O5`, `K2O`, `N-plus-K2O`, `S`, `all`, `phosphate-N`.
             * @example N
             * @example urea-N
             * @example urea-and-sulfate-N
             * @example N-beside-phosphates
             * @example P2O5
             * @example K2O
             * @example N-plus-K2O
             * @example S
             * @example all
             * @example phosphate-N
             */
            nutrient: string;
            /** @description The heaviest load of all zones. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /**
             * Format: int32
             * @description The zone with that load, counted from 1.
             */
            zone: number;
        };
        /** @description Something that stands against going on. */
        ObstacleOfPlan: {
            /** @description Position of the meter; absent when it is about the field. */
            meter?: string;
            /** @description What it is, and what to do. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
        };
        /** @description Another container at hand. */
        OtherContainerOfTest: {
            /** @description What the owner calls it. */
            name?: string;
            /** @description Mass of the empty container. Range: 0 to 10 t. */
            tare: components["schemas"]["MassQuantity"];
        };
        /** @description What another metering element or another product would give. */
        OtherDeliveryOfTest: {
            /** @description What the owner calls it. */
            name?: string;
            /** @description The mass per revolution to expect of it. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Of another product: its bulk density, where the mass per revolution was found by tests. With that of the product tested the two are compared. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
        };
        /** @description One outlet over all tests. */
        OutletAnswer: {
            /** @description Net mass caught. */
            caught: components["schemas"]["MassQuantity"];
            /** @description Deviation from the mean of the outlets. */
            deviation: components["schemas"]["RatioQuantity"];
            /** @description The deviation is within the tolerance. */
            withinTolerance: boolean;
        };
        /** @description A bag or box of seed: of a mass or of a count of pure seeds, exactly one of the two. */
        PackageOfSeed: {
            /** @description Mass of the seed in one package. No default. Range: above 0 and up to 1000 t. */
            mass?: components["schemas"]["MassQuantity"];
            /**
             * Format: double
             * @description Pure seeds in one package. No default.
             */
            seeds?: number;
            /** @description Price of one package. */
            price?: components["schemas"]["PackagePrice"];
        };
        /** @description A price of one package. */
        PackagePrice: {
            /**
             * Format: double
             * @description Amount of money.
             */
            value: number;
            /** @description ISO 4217 currency code, for example EUR. */
            currency: string;
        };
        /** @description Seed in packages. */
        PackagesAnswer: {
            /** @description Mass of one package. */
            mass: components["schemas"]["MassQuantity"];
            /** @description Area that one package sows. */
            areaPerPackage: components["schemas"]["AreaQuantity"];
            /**
             * Format: double
             * @description Packages that the area takes, not rounded; absent without an area.
             */
            needed?: number;
            /**
             * Format: double
             * @description The same rounded up to whole packages.
             */
            whole?: number;
            /** @description What stays in the last package. */
            leftOver?: components["schemas"]["MassQuantity"];
        };
        /** @description A plan as stored. */
        PlanAnswer: {
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Id of the machine. */
            machine: string;
            /** @description Id of the scale that will weigh the catches. */
            scale: string;
            /** @description Id of the container for the catches. */
            container?: string;
            /** @description Planned ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Ground speeds between which the field will be worked. */
            workingSpeeds?: components["schemas"]["SpeedRange"];
            /** @description Area to be seeded. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description Largest acceptable expanded uncertainty of a catch test. Default 3 %: default; judgement, no published source. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Longest run of one catch. Default 300 s: default; judgement, no published source. */
            maximumRunTime?: components["schemas"]["TimeQuantity"];
            /** @description Shortest run of one catch, not above the longest. A drive takes some seconds to settle. Default 20 s: a drive takes some seconds to settle; judgement, no published source. */
            minimumRunTime?: components["schemas"]["TimeQuantity"];
            /**
             * Format: int32
             * @description How many of the container are at hand. With fewer than meters, the catch plan says so.
             */
            containersAtHand?: number;
            /** @description Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first. */
            liftLimit?: components["schemas"]["MassQuantity"];
            /** @description Share of the time spent working, for the area per hour. Default 70 %: from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %. */
            fieldEfficiency?: components["schemas"]["RatioQuantity"];
            /** @description Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least cost. */
            nutrients?: components["schemas"]["WantedNutrient"][];
            /** @description Nutrients that are there already: applied earlier, or supplied by the soil. */
            nutrientCredits?: components["schemas"]["CreditedNutrient"][];
            /** @description The seed row of this field; what is placed with the seed is compared with published limits and your own. */
            seedRow?: components["schemas"]["SeedRowOfPlan"];
            /** @description Conditions expected while seeding; tests under others get a finding. */
            sowingConditions?: components["schemas"]["Conditions"];
            /** @description What each meter puts down. */
            meters: components["schemas"]["MeterOfFieldPlan"][];
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
        };
        /** @description A page of a list. */
        PlanAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["PlanAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A plan for a field: which meter puts down which product at which rate, and the catch test that goes before. */
        PlanRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired?: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Id of the machine. */
            machine: string;
            /** @description Id of the scale that will weigh the catches. */
            scale: string;
            /** @description Id of the container for the catches. */
            container?: string;
            /** @description Planned ground speed. Range: above 0 and up to 100 km/h. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Ground speeds between which the field will be worked. */
            workingSpeeds?: components["schemas"]["SpeedRange"];
            /** @description Area to be seeded. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description Largest acceptable expanded uncertainty of a catch test. Default 3 %: default; judgement, no published source. Range: 0.1 to 50 %. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Longest run of one catch. Default 300 s: default; judgement, no published source. Range: above 0 and up to 24 h. */
            maximumRunTime?: components["schemas"]["TimeQuantity"];
            /** @description Shortest run of one catch, not above the longest. A drive takes some seconds to settle. Default 20 s: a drive takes some seconds to settle; judgement, no published source. Range: above 0 and up to 24 h. */
            minimumRunTime?: components["schemas"]["TimeQuantity"];
            /**
             * Format: int32
             * @description How many of the container are at hand. With fewer than meters, the catch plan says so. No default.
             */
            containersAtHand?: number;
            /** @description Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first. Range: above 0 and up to 1000 t. */
            liftLimit?: components["schemas"]["MassQuantity"];
            /** @description Share of the time spent working, for the area per hour. Default 70 %: from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %. Range: above 0 and up to 100 %. */
            fieldEfficiency?: components["schemas"]["RatioQuantity"];
            /** @description Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least cost. */
            nutrients?: components["schemas"]["WantedNutrient"][];
            /** @description Nutrients that are there already: applied earlier, or supplied by the soil. */
            nutrientCredits?: components["schemas"]["CreditedNutrient"][];
            /** @description The seed row of this field; what is placed with the seed is compared with published limits and your own. */
            seedRow?: components["schemas"]["SeedRowOfPlan"];
            /** @description Conditions expected while seeding; tests under others get a finding. */
            sowingConditions?: components["schemas"]["Conditions"];
            /** @description What each meter puts down. */
            meters: components["schemas"]["MeterOfFieldPlan"][];
        };
        /** @description Rates and set-up of a field: every calculation that the plan and its records allow, each as its own operation would answer it. */
        PlanSetUpAnswer: {
            /** @description The outcome in a few sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description Whether the field can be begun. `ready`: every meter has a rate and a mass per revolution, its element serves that rate at the planned ground speeds, all that lies with the seed has a limit and is within it, the fan suits all products, the nutrients are met, no lot asks for a test first, and nothing is missing. `incomplete`: nothing is known to stand in the way, but something is missing. `blocked`: something stands in the way.
             * @example ready
             * @example incomplete
             * @example blocked
             */
            verdict: string;
            /** @description What stands against going on, the worst first: a rate that a meter cannot reach, then too much with the seed, then a meter that turns too slowly, the air, nutrients, a lot to be tested. Empty when nothing is. What is not known yet is under missing. */
            obstacles: components["schemas"]["ObstacleOfPlan"][];
            /** @description The meters, in the order of the plan. */
            meters: components["schemas"]["MeterSetUpAnswer"][];
            /** @description How the products supply the nutrients that are wanted; absent when the plan wants none, or a rate or an analysis is missing. Where several meters share a product, its line is for all of them together, on the whole field. */
            nutrients?: components["schemas"]["ProductRateAnswer"];
            /** @description What lies with the seed against published limits; absent when nothing is placed with the seed, or something that it needs is missing. */
            seedRow?: components["schemas"]["SeedRowLimitAnswer"];
            /** @description Where the fan may stand for all products, and what the air carries; absent when no product states its fan speeds. Compared with the fan speed of the sowing conditions. */
            fan?: components["schemas"]["FanAnswer"];
            /** @description What could not be computed, and what to add. */
            missing: components["schemas"]["MissingOfPlan"][];
            /** @description What can hurt people or the crop. Codes known today: `local-guidance-first`, `limit-is-no-promise`, `spread-to-be-measured`, `soil-test-first`, `seed-row-has-its-own-limit`, `not-all-products-mix`, `treated-seed`, `manual-first`, `unexpected-start`, `stored-pressure`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description What another lot is expected to give. */
        PredictedValueOfTest: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Its own standard uncertainty, relative. Default 5 %: judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description A pressure above that of the air around. */
        PressureQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kPa" | "mbar" | "psi" | "inH2O";
        };
        /** @description A price per mass. */
        Price: {
            /**
             * Format: double
             * @description Amount of money for one `per`.
             */
            value: number;
            /** @description ISO 4217 currency code, for example EUR. */
            currency: string;
            /**
             * @description The mass that the amount buys, as a unit of mass.
             * @enum {string}
             */
            per: "kg" | "g" | "t" | "lb" | "oz" | "ton-us" | "ton-uk";
        };
        /** @description A number as a source prints it. */
        PrintedLimit: {
            /** @description The geometry that it is printed for. */
            geometry: string;
            /** @description The number, in the unit of the source. */
            limit: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description A share of seeds expected before counting. */
        PriorOfShare: {
            /**
             * @description Which share: `survival` (plants per pure seed) or `emergence` (plants per viable seed).
             * @enum {string}
             */
            reading: "survival" | "emergence";
            /** @description Its mean. Range: 1 to 99.9 %. */
            mean: components["schemas"]["RatioQuantity"];
            /** @description Its standard deviation from field to field and season to season. Range: 0.1 to 50 %. */
            spread: components["schemas"]["RatioQuantity"];
        };
        /** @description What went wrong and what to do about it (RFC 9457). */
        Problem: {
            /** @description Kind of problem; `about:blank` says that the status tells it all, other kinds are those registered with IANA. Act on `errors[].code`; `/reference/codes` explains every one. */
            type: string;
            /** @description The name of the status. */
            title: string;
            /**
             * Format: int32
             * @description The HTTP status.
             */
            status: number;
            /** @description What went wrong, in one sentence. */
            detail: string;
            /** @description Identifier under which the service's operator finds this request in the logs. */
            traceId: string;
            /** @description With 429: the policies of `RateLimit-Policy` that were exceeded. */
            "violated-policies"?: string[];
            /** @description Every error found, at least one. */
            errors: components["schemas"]["ProblemError"][];
        };
        /** @description One error of a request. */
        ProblemError: {
            /** @description Where in the body, as an RFC 6901 JSON pointer in its URI fragment form, for example `#/catches/0/gross`; absent when it is not about the body. */
            pointer?: string;
            /** @description The query parameter it is about; absent when it is not about the query. */
            parameter?: string;
            /** @description The header it is about; absent when it is not about a header. */
            header?: string;
            /**
             * Format: int64
             * @description The row of a table it is about, as a spreadsheet counts it: the header is row 1. Absent when what was sent is no table.
             */
            row?: number;
            /** @description The column of a table it is about, as its header writes it; absent when it is about no single column. */
            column?: string;
            /**
             * @description Stable code. Those with which the engine refuses stand at the status 422 of the operation; `GET /v1/codes` explains each. Known today: `already-superseded`, `body-too-large`, `body-too-slow`, `catches-all-excluded`, `credentials-broken`, `cursor-invalid`, `database-restored`, `density-missing`, `element-not-in-meter`, `encoding-unsupported`, `id-taken`, `id-unknown`, `idempotency-in-flight`, `idempotency-key-reused`, `internal-error`, `json-broken`, `key-expired`, `key-invalid`, `key-missing`, `key-revoked`, `line-too-long`, `media-type-unsupported`, `member-duplicate`, `member-missing`, `member-unknown`, `meter-not-on-machine`, `method-not-allowed`, `net-negative`, `not-acceptable`, `not-found`, `number-ambiguous`, `number-out-of-range`, `precondition-failed`, `precondition-required`, `rate-exceeded`, `record-retired`, `records-at-odds`, `request-broken`, `revolutions-not-positive`, `rows-apart`, `scope-missing`, `service-busy`, `settings-at-odds`, `storage-unavailable`, `tare-above-gross`, `text-too-long`, `text-wrong`, `time-wrong`, `too-few`, `too-many`, `type-wrong`, `unit-ambiguous`, `unit-missing`, `unit-unknown`, `unit-wrong-dimension`, `value-missing`, `word-unknown`, `workspace-retired`.
             * @example already-superseded
             * @example body-too-large
             * @example body-too-slow
             * @example catches-all-excluded
             * @example credentials-broken
             * @example cursor-invalid
             * @example database-restored
             * @example density-missing
             * @example element-not-in-meter
             * @example encoding-unsupported
             * @example id-taken
             * @example id-unknown
             * @example idempotency-in-flight
             * @example idempotency-key-reused
             * @example internal-error
             * @example json-broken
             * @example key-expired
             * @example key-invalid
             * @example key-missing
             * @example key-revoked
             * @example line-too-long
             * @example media-type-unsupported
             * @example member-duplicate
             * @example member-missing
             * @example member-unknown
             * @example meter-not-on-machine
             * @example method-not-allowed
             * @example net-negative
             * @example not-acceptable
             * @example not-found
             * @example number-ambiguous
             * @example number-out-of-range
             * @example precondition-failed
             * @example precondition-required
             * @example rate-exceeded
             * @example record-retired
             * @example records-at-odds
             * @example request-broken
             * @example revolutions-not-positive
             * @example rows-apart
             * @example scope-missing
             * @example service-busy
             * @example settings-at-odds
             * @example storage-unavailable
             * @example tare-above-gross
             * @example text-too-long
             * @example text-wrong
             * @example time-wrong
             * @example too-few
             * @example too-many
             * @example type-wrong
             * @example unit-ambiguous
             * @example unit-missing
             * @example unit-unknown
             * @example unit-wrong-dimension
             * @example value-missing
             * @example word-unknown
             * @example workspace-retired
             */
            code: string;
            /** @description What is wrong and what to do. */
            detail: string;
        };
        /** @description A product as stored. */
        ProductAnswer: {
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking). */
            material?: string;
            /** @description Usual bulk density; a lot may have its own. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description Its nutrients, each as a share of its mass in a stated form; for a fertilizer. */
            analysis?: components["schemas"]["ShareOfNutrient"][];
            /** @description Form of its nitrogen. When it is not stated, all nitrogen beside the seed counts as urea. */
            nitrogenForm?: string;
            /** @description Fan speeds that the product may have on this machine; yours, from the machine's manual. */
            fanSpeedLimits?: components["schemas"]["RotationLimits"];
            /** @description Price. */
            price?: components["schemas"]["Price"];
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
        };
        /** @description A page of a list. */
        ProductAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["ProductAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A product in the air stream. */
        ProductInAir: {
            /** @description What the owner calls it. */
            name: string;
            /** @description Its rates; those of the question when left out. Range: 0 to 100000 kg/ha. */
            rates?: components["schemas"]["MassPerAreaQuantity"][];
            /** @description Width that its meter covers; that of the question when left out. No default. Range: 0.01 to 200 m. */
            coveredWidth?: components["schemas"]["LengthQuantity"];
            /** @description Fan speeds that this product may have. */
            fanSpeedLimits?: components["schemas"]["RotationLimits"];
            /** @description Air flows that this product may have. */
            airFlowLimits?: components["schemas"]["AirFlowLimits"];
        };
        /** @description What the air carries of one product. */
        ProductLoadAnswer: {
            /** @description The product. */
            name: string;
            /** @description Its mass flow: rate times width times ground speed. */
            massFlow: components["schemas"]["MassPerTimeQuantity"];
            /** @description Its mass in a volume of air; absent without a planned air flow. */
            massPerAir?: components["schemas"]["BulkDensityQuantity"];
        };
        /** @description A combination of rate and ground speed. */
        ProductNeedAnswer: {
            /** @description The rate. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Product that the meter has to deliver. */
            massFlow: components["schemas"]["MassPerTimeQuantity"];
        };
        /** @description The product of a catch test. */
        ProductOfTest: {
            /** @description What the owner calls it. */
            name?: string;
            /**
             * @description How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking).
             * @enum {string}
             */
            material?: "free-flowing" | "small-seed" | "dusty";
            /** @description Bulk density; needed when the controller takes a volume per revolution. With it the container and the element say what a catch can be. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description Price; gives the cost of a wrong value. */
            price?: components["schemas"]["Price"];
        };
        /** @description A product that can be applied. */
        ProductOffer: {
            /** @description What you call it. */
            name: string;
            /** @description Its nutrients, each as a share of its mass in a stated form. A grade such as 11-52-0 states N, P2O5 and K2O in most countries, but the elements N, P and K in some: look on the label. */
            analysis: components["schemas"]["ShareOfNutrient"][];
            /** @description Price. Default none: without prices the rates are those of least total mass. */
            price?: components["schemas"]["Price"];
            /** @description It is applied at no less than this rate. None when left out. No default. Range: 0 to 100000 kg/ha. */
            minimumRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description It is applied at no more than this rate, for example because of a limit for the seed row or of the meter. No limit when left out. No default. Range: 0 to 100000 kg/ha. */
            maximumRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Its rate is decided already, as for a starter; its nutrients count like credits and its cost is added. Excludes minimumRate and maximumRate. No default. Range: 0 to 100000 kg/ha. */
            fixedRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Mass of one package; left out for bulk. No default. Range: 0.1 to 100000 kg. */
            packageMass?: components["schemas"]["MassQuantity"];
        };
        /** @description Rates of products, what they supply and what they cost. */
        ProductRateAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description Whether all targets are `met`; when `missed`, the rates are the nearest that can be had, and a finding says why for each target missed.
             * @example met
             * @example missed
             */
            verdict: string;
            /** @description The products, in the order of the question. */
            products: components["schemas"]["ProductRateLine"][];
            /** @description Each nutrient that a target, a credit or a product names. */
            nutrients: components["schemas"]["NutrientLine"][];
            /** @description Mass of all products together. */
            totalRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Analysis of a blend of the products whose rates were computed; empty when none of them is applied. */
            blend: components["schemas"]["BlendShare"][];
            /** @description Cost of all products per area; absent without prices. */
            costPerArea?: components["schemas"]["CostPerUnit"];
            /** @description Cost of all products over the area; absent without prices or area. */
            totalCost?: components["schemas"]["Money"];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `nutrient-without-source`, `credits-above-target`, `most-rate-binds`, `least-rate-binds`, `targets-conflict`, `large-surplus`, `unusual-product-rate`, `element-or-oxide`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What can hurt people or the crop. Codes known today: `soil-test-first`, `seed-row-has-its-own-limit`, `not-all-products-mix`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        ProductRateAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["ProductRateAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description One product. */
        ProductRateLine: {
            /** @description Its name. */
            name: string;
            /** @description Its rate. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /** @description True when the question fixed the rate. */
            isFixed: boolean;
            /** @description What it brings of each nutrient that it holds. */
            supplies: components["schemas"]["SuppliedNutrient"][];
            /** @description Its cost per area; absent without prices. */
            costPerArea?: components["schemas"]["CostPerUnit"];
            /** @description Its mass over the area; absent without an area. */
            totalMass?: components["schemas"]["MassQuantity"];
            /**
             * Format: int64
             * @description Whole packages that hold that mass; absent without an area or for bulk.
             */
            packages?: number;
            /** @description Cost of that mass, not of whole packages; absent without prices or area. */
            totalCost?: components["schemas"]["Money"];
            /** @description Cost of its nutrient per mass, where it holds only one; absent without prices. */
            nutrientCost?: components["schemas"]["CostOfNutrient"];
        };
        /** @description Nutrients that are wanted, and the products that can supply them. */
        ProductRateRequest: {
            /** @description What is wanted of each nutrient: nitrogen, phosphorus, potassium, sulfur. One target for each nutrient. */
            targets: components["schemas"]["WantedNutrient"][];
            /** @description The products at hand. Among choices of equal cost and mass, earlier ones are taken before later ones. Either all have a price, in one currency, or none has. */
            products: components["schemas"]["ProductOffer"][];
            /** @description What is there already and need not be bought: applied earlier, or supplied by the soil. Credits of one nutrient add up. */
            credits?: components["schemas"]["CreditedNutrient"][];
            /** @description Area to be covered; gives totals and packages. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
        };
        /** @description A product that meters put down. */
        ProductRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired?: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /**
             * @description How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking).
             * @enum {string}
             */
            material?: "free-flowing" | "small-seed" | "dusty";
            /** @description Usual bulk density; a lot may have its own. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description Its nutrients, each as a share of its mass in a stated form; for a fertilizer. */
            analysis?: components["schemas"]["ShareOfNutrient"][];
            /**
             * @description Form of its nitrogen. When it is not stated, all nitrogen beside the seed counts as urea.
             * @enum {string}
             */
            nitrogenForm?: "urea" | "urea-ammonium-nitrate" | "ammonium-sulfate" | "ammonium-phosphate" | "ammonium-nitrate" | "other" | "urea-with-inhibitor";
            /** @description Fan speeds that the product may have on this machine; yours, from the machine's manual. */
            fanSpeedLimits?: components["schemas"]["RotationLimits"];
            /** @description Price. */
            price?: components["schemas"]["Price"];
        };
        /** @description A product placed with the seed: its analysis with rates, or nutrients at rates of their own. */
        ProductWithSeed: {
            /** @description What the owner calls it. */
            name: string;
            /** @description Its nutrients, each as a share of its mass in a stated form. Give it with rates. */
            analysis?: components["schemas"]["ShareOfNutrient"][];
            /** @description Rates of the product: one that holds everywhere, or one for each zone of a variable rate, in the same order for all products. Zero is allowed. Range: 0 to 100000 kg/ha. */
            rates?: components["schemas"]["MassPerAreaQuantity"][];
            /** @description Nutrients per area, the same everywhere. Give them in place of analysis and rates. */
            nutrients?: components["schemas"]["AmountOfNutrient"][];
            /**
             * @description Form of its nitrogen. Coated or treated urea is `urea`, for no source has a number for it, but `urea-with-inhibitor` where the treatment is a urease inhibitor: published limits count that as urea, and the stand-loss model has its own slope. Default urea, the form that harms most: judgement.
             * @enum {string}
             */
            nitrogenForm?: "urea" | "urea-ammonium-nitrate" | "ammonium-sulfate" | "ammonium-phosphate" | "ammonium-nitrate" | "other" | "urea-with-inhibitor";
        };
        /** @description A published bulk density, in the unit in which it was printed. */
        PublishedDensityAnswer: {
            /** @description Lowest printed value. */
            low: components["schemas"]["BulkDensityQuantity"];
            /** @description Highest printed value; the lowest where one value is printed. */
            high: components["schemas"]["BulkDensityQuantity"];
            /**
             * @description What the values are; a legal bushel weight is no measured density. Known today: `typical-range`, `measured-range`, `legal-bushel-weight`, `storage-factor`.
             * @example typical-range
             * @example measured-range
             * @example legal-bushel-weight
             * @example storage-factor
             */
            kind: string;
            /** @description The publication. */
            source: string;
        };
        /** @description Sensor pulses per distance driven. */
        PulsesPerDistanceQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "pulses/100m";
        };
        /** @description Sensor pulses per revolution. */
        PulsesPerRevolutionQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "pulses/rev";
        };
        /** @description A rate against its target. */
        RateAcceptanceAnswer: {
            /** @description Rate over target, less 1, with its interval: positive when too much. */
            deviation: components["schemas"]["MeasuredRatio"];
            /** @description The rate found is within the tolerance of the target. */
            withinTolerance: boolean;
            /**
             * Format: double
             * @description Probability that the true rate is.
             */
            probabilityWithinTolerance: number;
        };
        /** @description A rate and the stand that comes of it. */
        RateAnswer: {
            /** @description Pure seeds per area. */
            seedsPerArea: components["schemas"]["CountPerAreaQuantity"];
            /** @description Mass per area; absent without a kernel mass. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The stand in the mean of all seasons. */
            expectedStand: components["schemas"]["CountPerAreaQuantity"];
            /** @description The stand that is reached with the wanted probability. */
            standReached: components["schemas"]["CountPerAreaQuantity"];
            /**
             * Format: double
             * @description Probability that the minimum stand is reached.
             */
            probabilityReached: number;
        };
        /** @description A rate from a table, a label or a sum on paper. */
        RateFromElsewhere: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/ha" | "g/m2" | "lb/ac";
            /**
             * @description How it was made, where known: `divide-by-ten` is the trade's shortcut for lb/ac (plants per square foot times grams per thousand over survival over 10), `exact-units` has no such shortcut in it. Left out, a rate in lb/ac is judged by how far it is off.
             * @enum {string}
             */
            madeBy?: "exact-units" | "divide-by-ten";
        };
        /** @description Rates for the new lot. */
        RateOfLot: {
            /** @description Pure seeds per area, as with the lot before. */
            seedsPerArea: components["schemas"]["CountPerAreaQuantity"];
            /** @description Mass per area that holds them now; absent without the kernel mass of the new lot. */
            forSameSeeds?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Mass per area that brings up as many plants as before; absent unless both germinations are known. */
            forSameStand?: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description The rates that can be put down at a ground speed. */
        RateWindowAnswer: {
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Lowest; absent without a lower limit. */
            minimum?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Highest; absent without an upper limit. */
            maximum?: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description A ratio of like quantities. */
        RatioQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "%" | "1" | "ppm";
        };
        /** @description A reason for a verdict. */
        ReasonAnswer: {
            /** @description Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each. */
            code: string;
            /** @description A sentence that can be shown as it is. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
        };
        /** @description Whether a stored test, evaluated again, gives what it gave. */
        RecomputationAnswer: {
            /** @description Every value is the same. */
            equal: boolean;
            /** @description Version of the engine that evaluated it first. */
            engineVersionThen: string;
            /** @description Version of the engine now. */
            engineVersionNow: string;
            /** @description What differs; empty when equal. */
            differences: components["schemas"]["DifferenceAnswer"][];
        };
        /** @description A catch test to be kept as evidence. What is known of machine, product and scale comes from their records. */
        RecordCatchTestRequest: {
            /**
             * @description How the empty container was taken into account: `each` catch has its own tare reading, one reading is `shared` by all, or the scale was `zeroed` with the empty container on it. Default: each, or shared when sharedTare is given.
             * @enum {string}
             */
            tareReading?: "each" | "shared" | "zeroed";
            /** @description The one tare reading that serves all catches. No default. Range: above 0 and up to 1000 t. */
            sharedTare?: components["schemas"]["MassQuantity"];
            /**
             * @description Where a count begins within its smallest step: `free` (anywhere, the default) or `on-edge` of the sensor.
             * @enum {string}
             */
            countStart?: "free" | "on-edge";
            /** @description Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev. */
            turnResolution?: components["schemas"]["RevolutionsQuantity"];
            /** @description Steady meter speed; needed when catches give a run time or the controller takes a mass per time. No default. Range: above 0 and up to 10000 rpm. */
            meterSpeed?: components["schemas"]["RotationQuantity"];
            /** @description Smallest step of the run time. Default 0.5 s: default; judgement, no published source. Range: 0 to 60 s. */
            timeResolution?: components["schemas"]["TimeQuantity"];
            /** @description The value that was typed into the controller while it indicated a mass; default the value in force. Range: above 0 and up to 1000 kg/rev. */
            valueTypedIn?: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description Smallest step of the indicated mass. Default 0.1 kg: default; judgement, no published source. Range: 0 to 100 kg. */
            indicatedMassResolution?: components["schemas"]["MassQuantity"];
            /** @description Only some of the points that the meter feeds were caught, the same ones each time. */
            caughtPoints?: components["schemas"]["CaughtPointsOfTest"];
            /** @description The mass per revolution that the controller uses now: the number typed in. Default the value adopted for this meter, element, setting and product, where there is one and no startValue is given. Range: above 0 and up to 1000 kg/rev. */
            valueInForce?: components["schemas"]["ReferenceOfTest"];
            /** @description A predicted value to compare with where none is in force yet. No default. Range: above 0 and up to 1000 kg/rev. */
            startValue?: components["schemas"]["ReferenceOfTest"];
            /** @description What another lot is expected to give where that is not the value in force, for example the prediction for a new lot: the limit secondTestChange then counts from it, and mistakes are judged against it. No default. Range: above 0 and up to 1000 kg/rev. */
            predictedValue?: components["schemas"]["PredictedValueOfTest"];
            /** @description An earlier test of the same meter, element, setting, product and lot, set up apart from this one since the value in force was adopted. A change of at least secondTestChange is adopted when the two agree. A test before the last adoption is not combined. Default the stored test of the same meter, element, setting, product and lot since the value in force was adopted, not superseded, that bears this one out. Range: above 0 and up to 1000 kg/rev. */
            earlierTest?: components["schemas"]["EarlierTestOfTest"];
            /** @description The rate to be applied; gives the effect of a wrong value. Default that of the plan named. Range: above 0 and up to 100000 kg/ha. */
            targetRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The area still to be seeded; gives mass and cost. Default that of the plan named. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description The catches in the order in which they were made. */
            catches: components["schemas"]["CatchOfTest"][];
            /** @description The product is of another lot than the one behind the value compared with: a larger change is then ordinary. Default false. */
            newLot?: boolean;
            /**
             * Format: int32
             * @description Points or outlets whose product is meant to fall into the container; tells what one missed point would look like. Default the points caught, or the outlets of the meter.
             */
            catchPoints?: number;
            /** @description Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement. */
            ruledOutMistakes?: ("pounds-as-kilograms" | "kilograms-as-pounds" | "tare-not-taken-off" | "tare-taken-off-twice" | "tare-of-another-container" | "decimal-slip" | "digit-wrong" | "count-doubled" | "count-halved" | "meter-not-primed" | "container-overflowed" | "tank-bridged-or-empty" | "meter-isolated" | "catch-point-missed" | "half-of-points-as-whole" | "container-not-emptied" | "counter-not-reset" | "residue-in-container" | "wind-or-hand" | "ounces-as-decimals" | "pulses-per-revolution-wrong" | "turns-of-another-shaft" | "another-element" | "another-product" | "value-in-another-unit" | "value-in-force-wrong" | "start-value-wrong" | "something-else")[];
            /** @description Repeatability of one catch (standard deviation), scale and counter parts removed. Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev; with 2.9 % in place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no published source. Default from the catches of earlier tests of this meter, element, setting and product, once there are enough; before that as said above. Range: 0.01 to 30 %. */
            repeatability?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 % (JCGM 100:2008, G.4.2). With a repeatability from earlier tests the default is theirs.
             */
            repeatabilityDegreesOfFreedom?: number;
            /** @description Standard deviation from day to day beyond the scatter of catches. Default from the earlier tests of this meter, element, setting and product, once there are five; before that: Default 1 %: default until the series has five tests; judgement, no published source. Range: 0 to 20 %. */
            dayToDay?: components["schemas"]["RatioQuantity"];
            /** @description Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %. */
            tolerance?: components["schemas"]["RatioQuantity"];
            /** @description Largest acceptable expanded uncertainty of the result. Default that of the plan named; without one: Default 3 %: default; judgement, no published source. Range: 0.1 to 50 %. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /** @description Probability with which the number of further catches that a repeat asks for reaches the wanted precision. Default 80 %: probability with which the number of catches asked for is enough; judgement, no published source. Range: 50 to 99 %. */
            precisionProbability?: components["schemas"]["RatioQuantity"];
            /** @description Change from what was expected, from which a second test, set up anew, has to agree before anything is adopted. Default twice the tolerance. Default 10 %: twice the tolerance, by default twice the published 5 %: less can be one tolerance each of the old value and the new; judgement. Range: 0.1 to 100 %. */
            secondTestChange?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. */
            id?: string;
            /** @description Id of the machine. */
            machine: string;
            /** @description Position of the meter on the machine. */
            meter: string;
            /** @description Metering element fitted. */
            element: string;
            /** @description Setting of the meter, in the owner's words, for example a gear; none when absent. */
            setting?: string;
            /** @description Id of the product. */
            product: string;
            /** @description Id of the lot. */
            lot?: string;
            /** @description Id of the scale. */
            scale: string;
            /** @description Id of the container that the catches fell into. */
            container?: string;
            /** @description Id of the plan that the test belongs to; gives target rate, area and sowing conditions. */
            plan?: string;
            /**
             * Format: date-time
             * @description When the test was made, RFC 3339 with offset. The offset is given back as entered.
             */
            occurredAt: string;
            /** @description Who made it. */
            recordedBy: string;
            /** @description Conditions during the test. */
            conditions?: components["schemas"]["Conditions"];
            /** @description A remark in the sender's words. */
            note?: string;
            /** @description The wrong record of the same kind that this one takes the place of. */
            supersedes?: components["schemas"]["Supersedes"];
        };
        /** @description A density beside the published ones for its material. Information and a check: a measured density always goes first. */
        ReferenceAnswer: {
            /**
             * @description The material. Known today: `alfalfa`, `ammonium-nitrate-low-density`, `ammonium-nitrate-prilled`, `ammonium-sulfate-crystal`, `ammonium-sulfate-granular`, `barley`, `birdsfoot-trefoil`, `bluegrass`, `brome-grass`, `canary-seed`, `canola`, `chickpea`, `clover`, `cowpea`, `diammonium-phosphate`, `faba-bean`, `flax`, `lupin`, `corn`, `millet`, `monoammonium-phosphate`, `oat`, `orchard-grass`, `pea`, `potassium-chloride-granular`, `potassium-chloride-soluble`, `potassium-magnesium-sulfate`, `rice`, `rye`, `safflower`, `sorghum`, `soybean`, `sudan-grass`, `sugar-beet`, `sunflower`, `tall-fescue`, `timothy`, `triple-superphosphate`, `triticale`, `urea-granular`, `vetch`, `wheat`.
             * @example alfalfa
             * @example ammonium-nitrate-low-density
             * @example ammonium-nitrate-prilled
             * @example ammonium-sulfate-crystal
             * @example ammonium-sulfate-granular
             * @example barley
             * @example birdsfoot-trefoil
             * @example bluegrass
             * @example brome-grass
             * @example canary-seed
             * @example canola
             * @example chickpea
             * @example clover
             * @example cowpea
             * @example diammonium-phosphate
             * @example faba-bean
             * @example flax
             * @example lupin
             * @example corn
             * @example millet
             * @example monoammonium-phosphate
             * @example oat
             * @example orchard-grass
             * @example pea
             * @example potassium-chloride-granular
             * @example potassium-chloride-soluble
             * @example potassium-magnesium-sulfate
             * @example rice
             * @example rye
             * @example safflower
             * @example sorghum
             * @example soybean
             * @example sudan-grass
             * @example sugar-beet
             * @example sunflower
             * @example tall-fescue
             * @example timothy
             * @example triple-superphosphate
             * @example triticale
             * @example urea-granular
             * @example vetch
             * @example wheat
             */
            material: string;
            /** @description The lightest published value. */
            minimum: components["schemas"]["BulkDensityQuantity"];
            /** @description The densest published value. */
            maximum: components["schemas"]["BulkDensityQuantity"];
            /** @description How far the density is outside the published range, relative to its nearer end: above zero denser, below zero lighter, zero inside. */
            beyond: components["schemas"]["RatioQuantity"];
            /** @description Every published value as printed, with its source. Where sources differ, all are here. */
            published: components["schemas"]["PublishedDensityAnswer"][];
            /** @description How the density of the material was found to change with moisture. Information only: nothing was corrected. */
            moisture: components["schemas"]["MoistureAnswer"][];
        };
        /** @description A mass per revolution to compare with. */
        ReferenceOfTest: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Its own standard uncertainty, relative, where known. Default 2 %: default of a value in force: judgement, no published source. For a start value 10 %: a predicted start value may be 20 % off; judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description True when another scale, or the same one after another check, stands behind it: then no scale error cancels in the change. Default false. */
            fromAnotherScale?: boolean;
            /** @description Error of the scale behind it that was found only after it was adopted, beyond what was corrected then: where that alone explains a change, the answer says so first. */
            scaleErrorFoundLater?: components["schemas"]["KnownScaleErrorOfTest"];
            /**
             * Format: date-time
             * @description For a start value that a test measured and nobody adopted: when that test was made; the answer calls it by that day.
             */
            measuredAt?: string;
        };
        /** @description How often requests were turned away on a day. */
        RefusalItem: {
            /** @description The day in UTC. */
            day: string;
            /** @description Id of the key that was shown; absent where none is known. */
            key?: string;
            /**
             * @description Why: the code of the problem that was answered. Known today: `key-missing`, `key-invalid`, `key-expired`, `key-revoked`, `workspace-retired`, `scope-missing`, `credentials-broken`.
             * @example key-missing
             * @example key-invalid
             * @example key-expired
             * @example key-revoked
             * @example workspace-retired
             * @example scope-missing
             * @example credentials-broken
             */
            code: string;
            /**
             * Format: int64
             * @description How often.
             */
            count: number;
            /**
             * Format: date-time
             * @description The last time (UTC).
             */
            lastAt: string;
        };
        /** @description A page of a list. */
        RefusalItemPage: {
            /** @description The records of this page. */
            items: components["schemas"]["RefusalItem"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description Something that the test disturbs, in the owner's words. */
        RestorePoint: {
            /** @description What it is, for example a cover or a hose. */
            name: string;
            /** @description What is done to it before the catch. */
            toOpen?: string;
            /** @description How it is put back. */
            toRestore?: string;
        };
        /** @description Ends a key. */
        RevocationRequest: {
            /** @description Why, for whoever looks at it later. */
            reason: string;
        };
        /** @description A number of revolutions, whole or not. */
        RevolutionsQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "rev";
        };
        /** @description One part of the risk. */
        RiskPart: {
            /**
             * @description Where it comes from: `share-of-seeds` (emergence or survival), `germination-test`, `kernel-mass` or `metering`.
             * @example share-of-seeds
             * @example germination-test
             * @example kernel-mass
             * @example metering
             */
            source: string;
            /** @description Standard deviation, relative. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description How far a wheel rolled in how many turns. */
        RollingRun: {
            /** @description Distance rolled. Range: 0.1 to 10000 m. */
            distance: components["schemas"]["LengthQuantity"];
            /** @description Turns counted. Range: 0.1 to 100000 rev. */
            turns: components["schemas"]["RevolutionsQuantity"];
        };
        /** @description Meter speeds between which an element turns evenly and its drive keeps up. */
        RotationLimits: {
            /** @description Slowest. No default. Range: 0 to 10000 rpm. */
            minimum?: components["schemas"]["RotationQuantity"];
            /** @description Fastest. No default. Range: above 0 and up to 10000 rpm. */
            maximum?: components["schemas"]["RotationQuantity"];
        };
        /** @description The speed of a meter shaft. */
        RotationQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "rpm" | "rev/s";
        };
        /** @description A key takes the place of another. */
        RotationRequest: {
            /** @description The sender's own id for the new key, a UUID of version 7 in lower case. Default: the service makes one. */
            id?: string;
            /**
             * Format: date-time
             * @description Until when the old key goes on, RFC 3339; it does not outlive its own expiry. Now ends it at once.
             */
            until: string;
            /**
             * Format: date-time
             * @description From when on the new key opens nothing, RFC 3339. Default: it gets as long a life as the old one was given. It cannot outlive the key that makes it.
             */
            expiresAt?: string;
        };
        /** @description How runs agree. */
        RunAgreementAnswer: {
            /** @description Standard deviation of the runs, relative; zero for one run. */
            spread: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Sum of squared deviations over the variances expected of them.
             */
            q: number;
            /**
             * Format: double
             * @description How often chance alone gives at least this Q.
             */
            qProbability: number;
            /** @description Counts per distance there over those back, less 1; absent unless both ways were driven. */
            directionDifference?: components["schemas"]["RatioQuantity"];
            /** @description No test speaks against the runs; all tests together err in 5 of 100 honest cases. */
            agree: boolean;
        };
        /** @description One run as evaluated. */
        RunAnswer: {
            /** @description Distance driven. */
            distance: components["schemas"]["LengthQuantity"];
            /** @description Pulses per distance of this run alone. */
            pulsesPerDistance?: components["schemas"]["PulsesPerDistanceQuantity"];
            /** @description Distance per turn of the wheel of this run alone. */
            distancePerTurn?: components["schemas"]["LengthQuantity"];
            /** @description Its counts per distance against those of all runs together. */
            deviation: components["schemas"]["RatioQuantity"];
            /** @description Distance over time; absent without a time. */
            groundSpeed?: components["schemas"]["SpeedQuantity"];
        };
        /** @description One run: the distance, and either pulses or turns. */
        RunOfSensor: {
            /** @description Distance driven, as measured with a tape. Range: 1 to 10000 m. */
            distance: components["schemas"]["LengthQuantity"];
            /**
             * Format: double
             * @description Sensor pulses over it, a plain count. No default.
             */
            pulses?: number;
            /** @description Turns of the wheel over it, in place of pulses. No default. Range: 0.1 to 1000000 rev. */
            turns?: components["schemas"]["RevolutionsQuantity"];
            /** @description Standard uncertainty of this distance, beside the limit of the tape. Default as the distance resolution says: common practice, for two marks. Range: 0 to 100 m. */
            distanceUncertainty?: components["schemas"]["LengthQuantity"];
            /**
             * @description Which way it was driven: `there` or `back`. With runs of both kinds the two ways are compared.
             * @enum {string}
             */
            direction?: "there" | "back";
            /** @description Time taken for the distance at an even speed; gives the ground speed. No default. Range: above 0 and up to 24 h. */
            time?: components["schemas"]["TimeQuantity"];
        };
        /** @description One part of the uncertainty. */
        RunUncertaintyPart: {
            /**
             * @description Where it comes from: `runs` (scatter, counting, marking) or `tape` (common to all).
             * @example runs
             * @example tape
             */
            source: string;
            /** @description Standard uncertainty, relative. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description Seeds that were counted and weighed together. */
        SampleOfSeed: {
            /**
             * Format: int32
             * @description Seeds counted.
             */
            seeds: number;
            /** @description Their mass together. Range: above 0 and up to 1000 t. */
            mass: components["schemas"]["MassQuantity"];
        };
        /** @description A scale as stored. */
        ScaleAnswer: {
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Smallest step of the display. */
            division: components["schemas"]["MassQuantity"];
            /** @description Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII. */
            accuracyClass?: string;
            /** @description Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76). */
            verificationInterval?: components["schemas"]["MassQuantity"];
            /** @description Limit of error stated by the maker or owner; goes before the class. */
            statedAccuracy?: components["schemas"]["MassQuantity"];
            /** @description Largest load, container included. */
            capacity?: components["schemas"]["MassQuantity"];
            /**
             * Format: int32
             * @description Days after which a check is overdue. Default 365: judgement, no published source.
             */
            daysBetweenChecks?: number;
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
        };
        /** @description A page of a list. */
        ScaleAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["ScaleAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A stored check of a scale. */
        ScaleCheckAnswer: {
            /** @description Id, a UUID of version 7. */
            id: string;
            /**
             * Format: date-time
             * @description When it was made, with the offset it was entered with.
             */
            occurredAt: string;
            /**
             * Format: date-time
             * @description When the service received it.
             */
            receivedAt: string;
            /** @description The outcome in one sentence that can be shown as it is. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description `passed` when every reading is inside the limit of the scale, otherwise `failed`.
             * @example passed
             * @example failed
             */
            verdict: string;
            /** @description Span error: indicated minus true over true. Later tests on this scale are corrected for it. */
            error: components["schemas"]["RatioQuantity"];
            /** @description Standard uncertainty of that error. */
            standardUncertainty: components["schemas"]["RatioQuantity"];
            /** @description The deviation that comes nearest to its limit or exceeds it most. */
            largestDeviation: components["schemas"]["MassQuantity"];
            /** @description The limit at that load. */
            limit: components["schemas"]["MassQuantity"];
            /** @description Where the limit comes from. */
            limitOrigin: string;
            /** @description The request exactly as entered. */
            entered: components["schemas"]["ScaleCheckRequest"];
            /** @description The record that took its place, with the reason; absent while it stands. */
            supersededBy?: components["schemas"]["Supersedes"];
        };
        /** @description A check of a scale against known masses. */
        ScaleCheckRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. */
            id?: string;
            /** @description Id of the scale. */
            scale: string;
            /** @description The readings, each of one known mass. */
            readings: components["schemas"]["KnownMassReadingOfCheck"][];
            /**
             * Format: date-time
             * @description When the check was made, RFC 3339 with offset.
             */
            occurredAt: string;
            /** @description Who made it. */
            recordedBy: string;
            /** @description A remark, for example which masses were used. */
            note?: string;
            /** @description The wrong check that this one takes the place of. */
            supersedes?: components["schemas"]["Supersedes"];
        };
        /** @description A scale. */
        ScaleOfTest: {
            /** @description Smallest step of the display. Range: above 0 and up to 100 kg. */
            division: components["schemas"]["MassQuantity"];
            /**
             * @description Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.
             * @enum {string}
             */
            accuracyClass?: "I" | "II" | "III" | "IIII";
            /** @description Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76). Range: above 0 and up to 100 kg. */
            verificationInterval?: components["schemas"]["MassQuantity"];
            /** @description Limit of error stated by the maker or owner; goes before the class. No default. Range: above 0 and up to 1000 kg. */
            statedAccuracy?: components["schemas"]["MassQuantity"];
            /** @description Span error found by a check against known masses: it is corrected, and only its uncertainty remains. */
            knownError?: components["schemas"]["KnownScaleErrorOfTest"];
            /** @description Largest load, container included. No default. Range: above 0 and up to 1000 t. */
            capacity?: components["schemas"]["MassQuantity"];
            /** @description Standard deviation of a reading of a load that swings or creeps, beyond the division. No default. Range: 0 to 100 kg. */
            readingScatter?: components["schemas"]["MassQuantity"];
        };
        /** @description A scale. Its span error comes from its checks, which are evidence of their own. */
        ScaleRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What the owner calls it. */
            name: string;
            /** @description No longer in use: takes no new evidence, and lists leave it out unless asked. Default false. */
            retired?: boolean;
            /** @description A remark in the owner's words. */
            note?: string;
            /** @description Smallest step of the display. Range: above 0 and up to 100 kg. */
            division: components["schemas"]["MassQuantity"];
            /**
             * @description Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.
             * @enum {string}
             */
            accuracyClass?: "I" | "II" | "III" | "IIII";
            /** @description Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76). Range: above 0 and up to 100 kg. */
            verificationInterval?: components["schemas"]["MassQuantity"];
            /** @description Limit of error stated by the maker or owner; goes before the class. No default. Range: above 0 and up to 1000 kg. */
            statedAccuracy?: components["schemas"]["MassQuantity"];
            /** @description Largest load, container included. No default. Range: above 0 and up to 1000 t. */
            capacity?: components["schemas"]["MassQuantity"];
            /**
             * Format: int32
             * @description Days after which a check is overdue. Default 365: judgement, no published source.
             */
            daysBetweenChecks?: number;
        };
        /** @description How counts scatter from spot to spot. */
        ScatterAnswer: {
            /** @description Standard deviation of the densities of the spots over the density of all. */
            coefficientOfVariation: components["schemas"]["RatioQuantity"];
            /** @description The part of it that chance does not explain; zero when chance explains all. */
            beyondChance: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Variance of the counts over what chance gives: about 1 for plants placed by chance, more when they stand clumped.
             */
            indexOfDispersion: number;
            /**
             * Format: double
             * @description How often chance alone scatters counts at least so much.
             */
            probabilityByChance: number;
        };
        /** @description An earlier test beside this one. */
        SecondTestAnswer: {
            /** @description What the earlier test is called. */
            test?: string;
            /**
             * Format: date-time
             * @description When it was made, as the question said it.
             */
            occurredAt?: string;
            /** @description The mass per revolution that it found. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description This test over the earlier one, less 1. */
            difference: components["schemas"]["RatioQuantity"];
            /** @description The largest difference, on the natural logarithm, of two honest tests like these, at the coverage probability. */
            largestHonestDifference: components["schemas"]["RatioQuantity"];
            /** @description The two differ by no more than honest tests do. */
            agrees: boolean;
            /** @description They agree, and each alone shows a change on the same side: the change is confirmed. */
            confirms: boolean;
            /** @description Both values together; what is adopted when the change is confirmed. */
            combined: components["schemas"]["MeasuredMassPerRevolution"];
        };
        /** @description What the seed costs. */
        SeedCostAnswer: {
            /** @description Cost per area. */
            costPerArea: components["schemas"]["CostPerUnit"];
            /** @description Cost of the seed that the area takes; absent without an area. */
            totalCost?: components["schemas"]["Money"];
            /** @description Cost of the packages rounded up; absent without an area or a package. */
            inWholePackages?: components["schemas"]["Money"];
        };
        /** @description What lies with the seed, and what published limits say to it. No answer says that a load is safe. */
        SeedRowLimitAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are; they name crop, place and source. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description The outcome over all limits: `above` when any is exceeded, `within` when none is, `no-published-limit` when none has a number for anything placed.
             * @example within
             * @example above
             * @example no-published-limit
             */
            verdict: string;
            /** @description Spread divided by row spacing. */
            seedbedUtilisation: components["schemas"]["RatioQuantity"];
            /** @description What lies with the seed: the sum over all products, in the zone where it is heaviest. */
            loads: components["schemas"]["NutrientLoadAnswer"][];
            /** @description Every limit for this crop and region: those exceeded first, the worst at the head; those without a number last. */
            limits: components["schemas"]["SeedRowLimitOfSource"][];
            /** @description The loss of stand that the linear model of South Dakota State University lets expect; absent for crops that it has no slope for. Judged in South Dakota, shown elsewhere. */
            standLoss?: components["schemas"]["StandLossAnswer"];
            /** @description Reductions that sources state for such a seedbed or such products. They hold for the limits of their own source only. */
            reductions: components["schemas"]["StatedReductionAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `above-published-limit`, `no-published-limit`, `nutrient-without-limit`, `sources-disagree`, `region-not-stated`, `nitrogen-form-not-stated`, `between-published-limits`, `limit-reduced`, `spread-unusual`, `stand-loss-above-accepted`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What can hurt the stand; always to be shown with the limits. Codes known today: `local-guidance-first`, `limit-is-no-promise`, `spread-to-be-measured`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        SeedRowLimitAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["SeedRowLimitAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description One limit against what lies with the seed. */
        SeedRowLimitOfSource: {
            /**
             * @description `within`: not above the limit. `above`: above it. `no-published-limit`: the source has no number for this case; the reason says why.
             * @example within
             * @example above
             * @example no-published-limit
             */
            verdict: string;
            /**
             * @description What the limit counts. Known today: `N`, `urea-N`, `urea-and-sulfate-N`, `N-beside-phosphates`, `P2O5`, `K2O`, `N-plus-K2O`, `S`, `all`, `phosphate-N`.
             * @example N
             * @example urea-N
             * @example urea-and-sulfate-N
             * @example N-beside-phosphates
             * @example P2O5
             * @example K2O
             * @example N-plus-K2O
             * @example S
             * @example all
             * @example phosphate-N
             */
            nutrient: string;
            /** @description The heaviest load of what it counts, over all zones. */
            load: components["schemas"]["MassPerAreaQuantity"];
            /**
             * Format: int32
             * @description The zone with that load, counted from 1.
             */
            zone: number;
            /** @description The limit, after the reduction that its source states for such a seedbed; absent without a number. */
            limit?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Limit less load: negative is the excess; absent without a number. */
            margin?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The number as the source prints it, in its own unit; absent without one. */
            asPrinted?: components["schemas"]["MassPerAreaQuantity"];
            /**
             * @description How the number was found: `published-cell` is printed for this geometry, the others take a stricter printed number. Absent without one. Known today: `published-cell`, `stricter-of-two-cells`, `widest-cell`.
             * @example published-cell
             * @example stricter-of-two-cells
             * @example widest-cell
             */
            basis?: string;
            /** @description The printed numbers that it rests on. */
            cells: components["schemas"]["PrintedLimit"][];
            /** @description Why there is no number; absent with one. */
            reason?: string;
            /** @description Conditions as the source states them. */
            conditions: string;
            /** @description The publication. */
            source: components["schemas"]["LimitSourceAnswer"];
        };
        /** @description What is placed with the seed, where and with which opener. */
        SeedRowLimitRequest: {
            /**
             * @description The crop. A limit of one crop is never used for another; `other` gets no number.
             * @enum {string}
             */
            crop: "wheat" | "barley" | "oat" | "rye" | "corn" | "soybean" | "pea" | "lentil" | "chickpea" | "dry-bean" | "canola" | "flax" | "sunflower" | "alfalfa" | "red-clover" | "vetch" | "ryegrass" | "timothy" | "other";
            /**
             * @description Texture of the soil: `light` is sandy loam or lighter, `medium` loam to clay loam, `heavy` clay to heavy clay. Take the lightest one of the field.
             * @enum {string}
             */
            soil: "light" | "medium" | "heavy";
            /**
             * @description Moisture of the seedbed: `good` is at or near field capacity and expected to stay so. In doubt, and in drying weather, it is `dry`.
             * @enum {string}
             */
            moisture: "good" | "dry";
            /**
             * @description Where the field lies. Without it limits of all regions are shown; `elsewhere` is any place without a word here.
             * @enum {string}
             */
            region?: "CA-MB" | "CA-SK" | "CA-AB" | "US-KS" | "US-ND" | "US-SD" | "elsewhere";
            /** @description Distance between rows. Range: above 0 and up to 5 m. */
            rowSpacing: components["schemas"]["LengthQuantity"];
            /** @description Width over which the opener spreads seed and fertilizer, measured in the field; at most the row spacing. Range: above 0 and up to 5 m. */
            seedRowWidth: components["schemas"]["LengthQuantity"];
            /**
             * @description The opener. A source rules one out on light soil, and pairs each with a usual spread.
             * @enum {string}
             */
            opener?: "double-disc" | "disc" | "knife" | "spoon" | "hoe" | "sweep";
            /** @description Everything that goes into the seed row together; their sum counts. */
            products: components["schemas"]["ProductWithSeed"][];
            /** @description Keys of the sources to look at, as answers name them. Without it all are looked at. */
            sources?: ("ccc-20" | "ccc-sp" | "ksu-corn" | "ksu-wheat" | "mb-dry" | "mb-safe-p" | "mb-sbu" | "mb-sbu2" | "mb-soy" | "mpsg-pea" | "ndsu-cpr" | "ndsu-flax" | "saskflax" | "sdsu-dry" | "sdsu-model" | "sk-canola" | "sk-safe-p" | "usask-pulse")[];
            /** @description Loss of stand from fertilizer with the seed that you accept, for the stand-loss model. Default 10 %: the loss of stand of the tables published by South Dakota State University; its worksheet is preset to 15 %. Range: above 0 and up to 50 %. */
            acceptableStandLoss?: components["schemas"]["RatioQuantity"];
            /** @description Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones. */
            localLimits?: components["schemas"]["LocalLimitWithSeed"][];
        };
        /** @description What decides how much may be placed with the seed on a field; row spacing and opener are those of the machine. */
        SeedRowOfPlan: {
            /**
             * @description The crop.
             * @enum {string}
             */
            crop: "wheat" | "barley" | "oat" | "rye" | "corn" | "soybean" | "pea" | "lentil" | "chickpea" | "dry-bean" | "canola" | "flax" | "sunflower" | "alfalfa" | "red-clover" | "vetch" | "ryegrass" | "timothy" | "other";
            /**
             * @description Texture of the soil; the lightest one of the field.
             * @enum {string}
             */
            soil: "light" | "medium" | "heavy";
            /**
             * @description Moisture of the seedbed; in doubt `dry`.
             * @enum {string}
             */
            moisture: "good" | "dry";
            /**
             * @description Where the field lies; without it limits of all regions are shown.
             * @enum {string}
             */
            region?: "CA-MB" | "CA-SK" | "CA-AB" | "US-KS" | "US-ND" | "US-SD" | "elsewhere";
            /** @description Loss of stand from fertilizer with the seed that you accept, for the stand-loss model. Default 10 %: the loss of stand of the tables published by South Dakota State University; its worksheet is preset to 15 %. Range: above 0 and up to 50 %. */
            acceptableStandLoss?: components["schemas"]["RatioQuantity"];
            /** @description Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones. */
            localLimits?: components["schemas"]["LocalLimitWithSeed"][];
        };
        /** @description A seeding rate with what it holds, brings up and costs. */
        SeedingRateAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description Mass to sow per area, with what is no pure seed. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Pure seeds per area. */
            seedsPerArea: components["schemas"]["CountPerAreaQuantity"];
            /** @description Pure seeds per area that can germinate; absent without germination. */
            germinableSeedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Plants expected per area; absent when germination and emergence, or survival, are not given. */
            plants?: components["schemas"]["ExpectedStand"];
            /** @description Pure seeds per length of row; absent without a row spacing. */
            seedsPerRow?: components["schemas"]["CountPerLengthQuantity"];
            /** @description Plants expected per length of row; absent without a row spacing or plants. */
            plantsPerRow?: components["schemas"]["CountPerLengthQuantity"];
            /** @description Mass of a thousand kernels. */
            thousandKernelMass: components["schemas"]["MassPerThousandQuantity"];
            /** @description Seeds per mass of pure seed. */
            seedsPerMass: components["schemas"]["CountPerMassQuantity"];
            /** @description Plants per pure seed: germination times emergence, or as given. */
            survival?: components["schemas"]["RatioQuantity"];
            /** @description Share of the mass that is pure and germinates: purity times germination; absent without germination. */
            pureLiveSeed?: components["schemas"]["RatioQuantity"];
            /** @description Mass that holds one mass of pure live seed; always with the unit 1. Absent without germination. */
            massForOnePureLive?: components["schemas"]["RatioQuantity"];
            /** @description Seed for the whole area; absent without an area. */
            massOverArea?: components["schemas"]["MassQuantity"];
            /** @description Packages; absent when none is described. */
            packages?: components["schemas"]["PackagesAnswer"];
            /** @description What the seed costs; absent without a price. */
            cost?: components["schemas"]["SeedCostAnswer"];
            /** @description The rate from elsewhere, compared; absent when none was stated. */
            statedRate?: components["schemas"]["StatedRateAnswer"];
            /** @description Where the uncertainty of the stand comes from: standard uncertainties, relative; their squares add up. Empty when none was stated. */
            uncertaintyParts: components["schemas"]["StandUncertainty"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed; unusual is possible and is not refused. Codes known today: `divide-by-ten`, `stated-rate-differs`, `small-sample`, `kernel-mass-unusual`, `germination-low`, `germination-not-used`, `emergence-unusual`, `seeds-above-published`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What can hurt a person. The product label goes first. Codes known today: `treated-seed`. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        SeedingRateAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["SeedingRateAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description What is fixed of a seeding rate (exactly one of targetStand, seedsPerArea, germinableSeedsPerArea, seedsPerRow and rate), and what is known of the seed. */
        SeedingRateRequest: {
            /** @description Plants per area that are to stand. Needs germination and emergence, or survival. No default. Range: above 0 and up to 100000 /m2. */
            targetStand?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Pure seeds per area that are to be sown. No default. Range: above 0 and up to 100000 /m2. */
            seedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Pure seeds per area that can germinate and are to be sown: seeds times germination. Needs germination. No default. Range: above 0 and up to 100000 /m2. */
            germinableSeedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Pure seeds per length of row that are to be sown. Needs rowSpacing. No default. Range: above 0 and up to 100000 /m. */
            seedsPerRow?: components["schemas"]["CountPerLengthQuantity"];
            /** @description Mass per area that is sown: the answer tells what it puts down and what stand it gives. No default. Range: above 0 and up to 100000 kg/ha. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Mass of a thousand kernels as sown, treatment included. Exactly one of this, seedsPerMass and sample. No default. Range: above 0 and up to 5000 g/1000. */
            thousandKernelMass?: components["schemas"]["MassPerThousandQuantity"];
            /** @description Seeds per mass, as a seed tag tells it. No default. Range: 200 to 1000000000 /kg. */
            seedsPerMass?: components["schemas"]["CountPerMassQuantity"];
            /** @description A sample that was counted and weighed. */
            sample?: components["schemas"]["SampleOfSeed"];
            /** @description Standard uncertainty of the kernel mass, relative; goes into the interval of the stand. No default. Range: above 0 and up to 50 %. */
            kernelMassUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description Share of the pure seeds that germinate. No default. Range: above 0 and up to 100 %. */
            germination?: components["schemas"]["RatioQuantity"];
            /**
             * Format: int32
             * @description Seeds in the germination test, for example 400; gives its uncertainty. No default.
             */
            germinationSeedsTested?: number;
            /** @description Field emergence: plants per seed that can germinate. Goes with germination, never with survival. No default. Range: above 0 and up to 100 %. */
            emergence?: components["schemas"]["RatioQuantity"];
            /** @description Lowest and highest emergence that you think possible, around the emergence; gives its uncertainty. */
            emergenceRange?: components["schemas"]["ShareRange"];
            /** @description Plants per pure seed, germination included, as many tables print it. Takes the place of germination and emergence. No default. Range: above 0 and up to 100 %. */
            survival?: components["schemas"]["RatioQuantity"];
            /** @description Lowest and highest survival that you think possible, around the survival; gives its uncertainty. */
            survivalRange?: components["schemas"]["ShareRange"];
            /** @description Share of the mass that is pure seed. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %. */
            purity?: components["schemas"]["RatioQuantity"];
            /**
             * @description The crop; kernel mass, germination and emergence are compared with what is published for it.
             * @enum {string}
             */
            crop?: "wheat" | "barley" | "oat" | "rye" | "corn" | "soybean" | "pea" | "lentil" | "chickpea" | "dry-bean" | "canola" | "flax" | "sunflower" | "alfalfa" | "red-clover" | "vetch" | "ryegrass" | "timothy" | "other";
            /** @description Distance between two rows; gives seeds and plants per length of row. No default. Range: above 0 and up to 10 m. */
            rowSpacing?: components["schemas"]["LengthQuantity"];
            /** @description Area to be sown; gives seed, packages and cost for it. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
            /** @description How the seed is packed. */
            package?: components["schemas"]["PackageOfSeed"];
            /** @description Price of the seed by mass. Give this or the price of a package. */
            price?: components["schemas"]["Price"];
            /** @description A rate that you have from elsewhere; the answer compares it. Not with rate. No default. Range: above 0 and up to 100000 kg/ha. */
            statedRate?: components["schemas"]["RateFromElsewhere"];
        };
        /** @description A number for the controller. */
        SensorEntryAnswer: {
            /**
             * @description The form in which the controller takes it: `pulses-per-distance`, `distance-per-pulse` or `wheel-circumference`.
             * @example pulses-per-distance
             * @example distance-per-pulse
             * @example wheel-circumference
             */
            form: string;
            /**
             * Format: double
             * @description The number to type in, already rounded to the controller's decimals: a count of pulses over `distance`, or a length in `unit`.
             */
            value: number;
            /** @description Its unit; absent for a count of pulses. */
            unit?: string;
            /** @description Distance over which the pulses are counted; absent for a length. */
            distance?: components["schemas"]["LengthQuantity"];
            /** @description Relative error of the pulses per distance that the rounding causes: positive when the controller then counts too little distance. */
            roundingError: components["schemas"]["RatioQuantity"];
        };
        /** @description What a sentence is made of. Absent where the sentence holds no values: it is its own template then. */
        SentenceParts: {
            /** @description The sentence with the name of each value in braces in its place. With the texts of the values filled in it is the sentence again. Look up your translation by it. */
            template: string;
            /** @description The values, each name once. */
            values: components["schemas"]["SentenceValue"][];
        };
        /** @description A value in a sentence. */
        SentenceValue: {
            /** @description Its name in the template. */
            name: string;
            /** @description As the sentence writes it: rounded, with its unit; or a word. */
            text: string;
            /**
             * Format: double
             * @description Where it is a quantity or a number, that number, not rounded for reading.
             */
            value?: number;
            /** @description The unit of a quantity. */
            unit?: string;
        };
        /** @description A share of the seeds with its interval; above 100 % when more plants were counted than seeds sown. */
        ShareEstimate: {
            /** @description The estimate. */
            estimate: components["schemas"]["RatioQuantity"];
            /** @description Lower end of the interval. */
            lower: components["schemas"]["RatioQuantity"];
            /** @description Upper end of the interval. */
            upper: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
        };
        /** @description A nutrient as a share of a product. */
        ShareOfNutrient: {
            /**
             * @description The nutrient in the form that the share is stated in.
             * @enum {string}
             */
            nutrient: "N" | "P2O5" | "P" | "K2O" | "K" | "S" | "SO4-S" | "SO3" | "SO4";
            /** @description Its share of the mass of the product. Range: 0 to 250 %. */
            share: components["schemas"]["RatioQuantity"];
        };
        /** @description Rates that one of several elements serves. */
        ShareOfRatesAnswer: {
            /** @description Lowest of them. */
            minimumRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Highest of them: there the next element takes over. */
            maximumRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description The displacements that serve them. */
            window: components["schemas"]["DisplacementWindowAnswer"];
        };
        /** @description Two shares, the lower one first. */
        ShareRange: {
            /** @description The lower one. Range: above 0 and up to 100 %. */
            minimum: components["schemas"]["RatioQuantity"];
            /** @description The higher one. Range: above 0 and up to 100 %. */
            maximum: components["schemas"]["RatioQuantity"];
        };
        /** @description A share of seeds in the season to come: as mean and spread, or as counted in one stand. */
        ShareToCome: {
            /** @description Its mean. Give mean with spread, or counted. No default. Range: 0.1 to 100 %. */
            mean?: components["schemas"]["RatioQuantity"];
            /** @description Its standard deviation from field to field and season to season; goes with mean. No default. Range: 0 to 50 %. */
            spread?: components["schemas"]["RatioQuantity"];
            /** @description What a stand count answered as survival or emergence. */
            counted?: components["schemas"]["CountedShare"];
            /** @description Standard deviation of the share from season to season, beside what the count leaves open; goes with counted. Without it the margin is too small. No default. Range: 0 to 50 %. */
            seasonSpread?: components["schemas"]["RatioQuantity"];
        };
        /** @description What was sown, as seeds per area or as a mass per area with the mass of a kernel. */
        SownSeed: {
            /** @description Pure seeds sown per area. Give this, or rate with thousandKernelMass. No default. Range: above 0 and up to 100000 /m2. */
            seedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Mass sown per area. No default. Range: above 0 and up to 100000 kg/ha. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Thousand-kernel mass of the seed as sown; goes with rate. No default. Range: above 0 and up to 5000 g/1000. */
            thousandKernelMass?: components["schemas"]["MassPerThousandQuantity"];
            /** @description Share of the mass that is pure seed; goes with rate. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %. */
            purity?: components["schemas"]["RatioQuantity"];
            /** @description Germination; with it emergence is told beside survival. No default. Range: above 0 and up to 100 %. */
            germination?: components["schemas"]["RatioQuantity"];
            /** @description Relative standard uncertainty of the seeds that were put down. Default 2.887 %: published acceptance limit of 5 % of the rate (Field and Solie 2007), taken as rectangular. Range: 0 to 50 %. */
            uncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description Meter speed at another ground speed. */
        SpeedCheckAnswer: {
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description The meter speed there. */
            meterSpeed: components["schemas"]["RotationQuantity"];
            /** @description Inside the limits. */
            withinLimits: boolean;
        };
        /** @description A ground speed. */
        SpeedQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "km/h" | "m/s" | "mi/h";
        };
        /** @description A range of ground speeds. */
        SpeedRange: {
            /** @description Slowest. Range: above 0 and up to 100 km/h. */
            minimum: components["schemas"]["SpeedQuantity"];
            /** @description Fastest. Range: above 0 and up to 100 km/h. */
            maximum: components["schemas"]["SpeedQuantity"];
        };
        /** @description The ground speeds at which a rate can be put down. */
        SpeedWindowAnswer: {
            /** @description The rate. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Slowest; absent without a lower limit. */
            minimum?: components["schemas"]["SpeedQuantity"];
            /** @description Fastest; absent without an upper limit. */
            maximum?: components["schemas"]["SpeedQuantity"];
        };
        /** @description A part of the spread. */
        SpreadPart: {
            /**
             * @description Where it comes from: `density`, `displacement`, `fill-efficiency`; or, learned from an earlier product, `earlier-density`, `earlier-value` and `product-to-product`.
             * @example density
             * @example displacement
             * @example fill-efficiency
             * @example earlier-density
             * @example earlier-value
             * @example product-to-product
             */
            source: string;
            /** @description Standard deviation, relative. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description The stand, how sure it is, and the share of the seeds that it makes. */
        StandCountAnswer: {
            /** @description The outcome in a few sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description Plants per area: all plants over all ground, with the interval. */
            stand: components["schemas"]["StandEstimate"];
            /**
             * Format: int64
             * @description All plants counted.
             */
            plantsCounted: number;
            /** @description All ground counted. */
            areaCounted: components["schemas"]["AreaQuantity"];
            /** @description Every count in the order given. */
            counts: components["schemas"]["CountAnswer"][];
            /** @description How the counts scatter; absent for one count and when no plant was found. */
            scatter?: components["schemas"]["ScatterAnswer"];
            /**
             * Format: int32
             * @description Number of counts like these that the wanted precision takes; absent for one count, which does not show how counts scatter, and when no practical number does.
             */
            countsNeeded?: number;
            /** @description Pure seeds sown; absent when nothing is known of them. */
            seedsSown?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Plants per pure seed: germination times emergence. */
            survival?: components["schemas"]["ShareEstimate"];
            /** @description Plants per viable seed, germination taken out. */
            emergence?: components["schemas"]["ShareEstimate"];
            /** @description The share between the prior and the counts; absent without a prior. */
            learned?: components["schemas"]["LearnedAnswer"];
            /** @description Stand over target less 1; absent without a target. */
            deviation?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Probability that the true stand is below the minimum; absent without one.
             */
            probabilityBelowMinimum?: number;
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `sample-area-miscalled`, `divide-by-ten`, `counts-at-odds-with-prior`, `stated-stand-differs`, `no-plants-found`, `single-reading`, `few-counts`, `more-counts-needed`, `strongly-clumped`, `counts-in-same-row`, `more-plants-than-seeds`, `prior-outweighs-counts`, `stand-below-minimum`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        StandCountAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["StandCountAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description Plants counted at some spots of a field, and what is known about what was sown there. */
        StandCountRequest: {
            /** @description The ground of each count that does not name its own: how long a row, how large a frame or hoop. */
            ground?: components["schemas"]["GroundOfCount"];
            /** @description The counts. */
            counts: components["schemas"]["CountOfPlants"][];
            /** @description What was sown; gives survival and, with germination, emergence. */
            sown?: components["schemas"]["SownSeed"];
            /** @description The share of seeds expected before counting; the answer shrinks the counted one towards it. */
            prior?: components["schemas"]["PriorOfShare"];
            /** @description The stand that was aimed at. No default. Range: above 0 and up to 100000 /m2. */
            targetStand?: components["schemas"]["CountPerAreaQuantity"];
            /** @description The stand below which something would be done. No default. Range: above 0 and up to 100000 /m2. */
            minimumStand?: components["schemas"]["CountPerAreaQuantity"];
            /** @description A stand that somebody made of these counts; it is compared, and known shortcuts are named. No default. Range: above 0 and up to 100000 /m2. */
            statedStand?: components["schemas"]["CountPerAreaQuantity"];
            /** @description Half width of the interval over the stand that is wanted; gives the number of counts. Default 15 %: judgement, no published source: about what ten counts of 20 plants give. Range: 1 to 100 %. */
            wantedPrecision?: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
        };
        /** @description Plants per area with their interval. */
        StandEstimate: {
            /** @description The estimate. */
            estimate: components["schemas"]["CountPerAreaQuantity"];
            /** @description Lower end of the interval. */
            lower: components["schemas"]["CountPerAreaQuantity"];
            /** @description Upper end of the interval. */
            upper: components["schemas"]["CountPerAreaQuantity"];
            /**
             * Format: double
             * @description Probability that the interval covers the true value.
             */
            coverageProbability: number;
        };
        /** @description Expected loss of stand: slope of crop and material times rate times row spacing over the width of the furrow. */
        StandLossAnswer: {
            /** @description Loss of stand that is accepted. */
            accepted: components["schemas"]["RatioQuantity"];
            /** @description Loss that the products with a slope let expect together, in the zone where it is largest; absent when none has a number. */
            expected?: components["schemas"]["RatioQuantity"];
            /** @description Every product with nutrients has a slope; otherwise more may be lost than expected. */
            isWhole: boolean;
            /**
             * Format: int32
             * @description The zone with that loss, counted from 1.
             */
            zone: number;
            /** @description The verdict counts it, because the field lies where the model is for. */
            judged: boolean;
            /** @description The products, in the order given. */
            products: components["schemas"]["StandLossOfProduct"][];
            /** @description Why there is no number; absent with one. */
            reason?: string;
            /** @description Conditions of the model. */
            conditions: string;
            /** @description The publication. */
            source: components["schemas"]["LimitSourceAnswer"];
        };
        /** @description A product in the stand-loss model. */
        StandLossOfProduct: {
            /** @description Name of the product. */
            name: string;
            /** @description The material whose slope was taken; absent when none that was read fits it. */
            material?: string;
            /** @description Loss that it lets expect by itself; absent without a number. */
            expected?: components["schemas"]["RatioQuantity"];
            /** @description The most of it that alone keeps to the accepted loss; absent without a number. */
            maximum?: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description A stand that is wanted. Give emergence, with a lot of known germination, or survival. */
        StandOfPlan: {
            /** @description Plants per area that are to stand. Range: above 0 and up to 100000 /m2. */
            plants: components["schemas"]["CountPerAreaQuantity"];
            /** @description Field emergence: plants per seed that can germinate. Goes with the germination of the lot. No default. Range: above 0 and up to 100 %. */
            emergence?: components["schemas"]["RatioQuantity"];
            /** @description Plants per pure seed, germination included. Takes the place of germination and emergence. No default. Range: above 0 and up to 100 %. */
            survival?: components["schemas"]["RatioQuantity"];
        };
        /** @description The rate for a minimum stand, what its margin costs, and how a rate of your own does. */
        StandRiskAnswer: {
            /** @description The outcome in a few sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /**
             * Format: double
             * @description Probability with which the minimum stand has to be reached.
             */
            probability: number;
            /** @description The rate that reaches the minimum stand with that probability; absent when no sensible rate does. */
            needed?: components["schemas"]["RateAnswer"];
            /** @description The rate that would just do in the mean of all seasons. */
            atMean: components["schemas"]["RateAnswer"];
            /** @description What the needed rate is more than the rate at the mean; absent without a needed rate. */
            margin?: components["schemas"]["MarginAnswer"];
            /** @description The rate of the question; absent without one. */
            given?: components["schemas"]["RateAnswer"];
            /** @description What makes the stand uncertain before it is sown: relative standard deviations. */
            uncertaintyParts: components["schemas"]["RiskPart"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. Codes known today: `stand-at-risk`, `rate-above-maximum`, `probability-out-of-reach`, `season-spread-missing`, `unusual-share-of-seeds`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        StandRiskAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["StandRiskAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A minimum stand, what is known of the seed, and how much of it may come up. */
        StandRiskRequest: {
            /** @description The stand that has to be reached. Range: above 0 and up to 100000 /m2. */
            minimumStand: components["schemas"]["CountPerAreaQuantity"];
            /**
             * Format: double
             * @description Probability with which it has to be reached. Default 0.9, nine seasons of ten; judgement, no published source.
             */
            probability?: number;
            /** @description Plants per viable seed; needs germination. Give this or survival. */
            emergence?: components["schemas"]["ShareToCome"];
            /** @description Plants per pure seed, germination being part of it. Give this or emergence. */
            survival?: components["schemas"]["ShareToCome"];
            /** @description Germination; goes with emergence. No default. Range: above 0 and up to 100 %. */
            germination?: components["schemas"]["RatioQuantity"];
            /**
             * Format: int32
             * @description Seeds that the germination test counted. Default 400 seeds, as the international rules for seed testing count; from memory.
             */
            germinationSeedsTested?: number;
            /** @description Thousand-kernel mass of the seed as sown; gives rates by mass. No default. Range: above 0 and up to 5000 g/1000. */
            thousandKernelMass?: components["schemas"]["MassPerThousandQuantity"];
            /** @description Relative standard uncertainty of the kernel mass. Default 2 %: judgement, no published source: a thousand kernels counted and weighed twice. Range: 0 to 50 %. */
            kernelMassUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description Share of the mass that is pure seed; goes with thousandKernelMass. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %. */
            purity?: components["schemas"]["RatioQuantity"];
            /** @description Relative standard uncertainty of what the meter puts down. Default 2.887 %: published acceptance limit of 5 % of the rate (Field and Solie 2007), taken as rectangular. Range: 0 to 50 %. */
            meteringUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description A rate of your own, in pure seeds per area. Give this or rate; the answer has its probability. No default. Range: above 0 and up to 100000 /m2. */
            seedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description A rate of your own by mass; needs thousandKernelMass. No default. Range: above 0 and up to 100000 kg/ha. */
            rate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The highest rate that may be sown, in pure seeds per area. Give this or maximumRate. No default. Range: above 0 and up to 100000 /m2. */
            maximumSeedsPerArea?: components["schemas"]["CountPerAreaQuantity"];
            /** @description The highest rate that may be sown by mass; needs thousandKernelMass. No default. Range: above 0 and up to 100000 kg/ha. */
            maximumRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Price of the seed; with thousandKernelMass the answer has what the margin costs. */
            price?: components["schemas"]["Price"];
            /** @description Area to be sown, for the cost of the margin on all of it; goes with price. No default. Range: above 0 and up to 1000000 ha. */
            area?: components["schemas"]["AreaQuantity"];
        };
        /** @description One part of the uncertainty of a stand. */
        StandUncertainty: {
            /**
             * @description Where it comes from. Known today: `kernel-mass`, `germination-test`, `emergence`.
             * @example kernel-mass
             * @example germination-test
             * @example emergence
             */
            source: string;
            /** @description Standard uncertainty, relative. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description A value to plan a catch with. */
        StartValueOfLot: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Its standard uncertainty, relative. */
            relativeUncertainty: components["schemas"]["RatioQuantity"];
        };
        /** @description A density that somebody stated. */
        StatedDensityOfProduct: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/hL" | "kg/m3" | "kg/L" | "lb/ft3" | "lb/bu-us" | "lb/bu-imp";
            /** @description Its standard uncertainty. Default 5 %: a density that somebody stated; judgement, no published source. Range: 0 to 50 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description A rate from elsewhere beside the one computed here. */
        StatedRateAnswer: {
            /** @description The rate stated. */
            rate: components["schemas"]["MassPerAreaQuantity"];
            /** @description How much it is above the rate of this answer; negative when below. */
            difference: components["schemas"]["RatioQuantity"];
            /** @description Pure seeds per area that it puts down. */
            seedsPerArea: components["schemas"]["CountPerAreaQuantity"];
            /** @description Plants that it brings up; absent when the establishment is unknown. */
            plants?: components["schemas"]["CountPerAreaQuantity"];
            /** @description It comes from dividing by 10: you said so, or it is in lb/ac, nobody said how it was made, and it is 4.13 % high. */
            fromDivideByTen: boolean;
        };
        /** @description A reduction that a source states for its own limits. */
        StatedReductionAnswer: {
            /** @description What the source says. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
            /** @description Share of the limit that is left; absent when it depends on the case. */
            left?: components["schemas"]["RatioQuantity"];
            /** @description It was applied to a limit of this answer. Where the limits of that source are not held, nothing could be. */
            applied: boolean;
            /** @description The publication. */
            source: components["schemas"]["LimitSourceAnswer"];
        };
        /** @description One step. */
        StepAnswer: {
            /** @description Identifier within the plan. */
            id: string;
            /** @description Steps that come before. */
            after: string[];
            /** @description What to do. */
            detail: string;
            /** @description What the sentence is made of, for showing it in another language. */
            parts?: components["schemas"]["SentenceParts"];
            /** @description The meter it is about, if one. */
            meter?: string;
        };
        /** @description The stop of one meter. */
        StopAnswer: {
            /** @description The meter. */
            meter: string;
            /** @description Time from the common start. */
            time: components["schemas"]["TimeQuantity"];
            /**
             * Format: int32
             * @description Number of the group, from 1; stops closer than ten seconds have the same.
             */
            group: number;
        };
        /** @description What keeps the machine from working. turnTime goes with runLength, refillTime with areaPerFill. */
        StopsInField: {
            /** @description Time of one turn at the end of a run. No default. Range: above 0 and up to 1 h. */
            turnTime?: components["schemas"]["TimeQuantity"];
            /** @description Length of a run. No default. Range: 1 to 100000 m. */
            runLength?: components["schemas"]["LengthQuantity"];
            /** @description Time of one refill, from stop to start. No default. Range: above 0 and up to 24 h. */
            refillTime?: components["schemas"]["TimeQuantity"];
            /** @description Area that a fill covers. No default. Range: 0.001 to 100000 ha. */
            areaPerFill?: components["schemas"]["AreaQuantity"];
        };
        /** @description A correction: which record was wrong, and why. */
        Supersedes: {
            /** @description Id of the record that was wrong. */
            record: string;
            /** @description What was wrong with it. */
            reason: string;
        };
        /** @description An amount of a nutrient. */
        SuppliedNutrient: {
            /**
             * @description The nutrient in the form that the amount is stated in. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
             * @example N
             * @example P2O5
             * @example P
             * @example K2O
             * @example K
             * @example S
             * @example SO4-S
             * @example SO3
             * @example SO4
             */
            nutrient: string;
            /** @description The amount. */
            amount: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description What a tank holds. */
        TankAnswer: {
            /** @description Mass of a fill. */
            mass: components["schemas"]["MassQuantity"];
            /** @description Mass at the lower end of the interval of the density. */
            lowerMass: components["schemas"]["MassQuantity"];
            /** @description Mass at the upper end. */
            upperMass: components["schemas"]["MassQuantity"];
            /** @description Area that a fill covers; absent without a rate. */
            area?: components["schemas"]["AreaQuantity"];
        };
        /** @description A tank. */
        TankOfMachine: {
            /** @description What the owner calls it. */
            name: string;
            /** @description Its volume. No default. Range: above 0 and up to 1000 m3. */
            volume?: components["schemas"]["VolumeQuantity"];
        };
        /** @description A tank to be filled. */
        TankOfProduct: {
            /** @description Its volume, taken as exact. Range: above 0 and up to 1000 m3. */
            volume: components["schemas"]["VolumeQuantity"];
            /** @description Share of it that is filled. Default 100 %: the stated volume of the tank is taken as what it holds; judgement, no published source. Range: 1 to 100 %. */
            fill?: components["schemas"]["RatioQuantity"];
            /** @description Rate at which its content is put down; gives the area of a fill. No default. Range: above 0 and up to 100000 kg/ha. */
            targetRate?: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description A temperature. */
        TemperatureQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "degC" | "degF";
        };
        /** @description A test weight. */
        TestWeightOfProduct: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/hL" | "kg/m3" | "kg/L" | "lb/ft3" | "lb/bu-us" | "lb/bu-imp";
            /** @description Its standard uncertainty as the density in a tank. Default 2 %: a test weight stands for a small cleaned sample; judgement, no published source. Range: 0 to 50 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description A time span. */
        TimeQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "s" | "min" | "h";
        };
        /** @description One turn test as evaluated. */
        TurnTestAnswer: {
            /** @description Turns of the drive wheel. */
            turns: components["schemas"]["RevolutionsQuantity"];
            /** @description Area that the machine would have worked meanwhile. */
            area: components["schemas"]["AreaQuantity"];
            /** @description Mass from all outlets, those not caught included. */
            metered: components["schemas"]["MassQuantity"];
            /** @description Rate of this test alone. */
            rate: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description One turn test: turns, and what fell meanwhile, as exactly one of caught and perOutlet. */
        TurnTestOfWheel: {
            /** @description Turns of the drive wheel. Range: 0.1 to 100000 rev. */
            turns: components["schemas"]["RevolutionsQuantity"];
            /** @description Net mass from all outlets that were caught together. No default. Range: above 0 and up to 1000 t. */
            caught?: components["schemas"]["MassQuantity"];
            /** @description Net mass outlet by outlet; the outlets are then compared with their mean. Range: 0 to 1000 t. */
            perOutlet?: components["schemas"]["MassQuantity"][];
        };
        /** @description Turns for one area. */
        TurnsAnswer: {
            /** @description The area. */
            area: components["schemas"]["AreaQuantity"];
            /** @description Distance that the machine drives over it. */
            distance: components["schemas"]["LengthQuantity"];
            /** @description Turns of the drive wheel. */
            turns: components["schemas"]["RevolutionsQuantity"];
            /** @description The nearest whole number of turns, which is easier to count. */
            wholeTurns: components["schemas"]["RevolutionsQuantity"];
            /** @description Revolutions of the meter over the area. */
            meterRevolutions?: components["schemas"]["RevolutionsQuantity"];
            /** @description Mass from all outlets over the area at the target rate. */
            catchInAll?: components["schemas"]["MassQuantity"];
            /** @description Mass from each outlet. */
            catchPerOutlet?: components["schemas"]["MassQuantity"];
            /** @description Mass from all outlets in the whole turns. */
            catchOfWholeTurns?: components["schemas"]["MassQuantity"];
            /** @description Mass from each outlet in the whole turns. */
            catchPerOutletOfWholeTurns?: components["schemas"]["MassQuantity"];
        };
        /** @description A number as typed into a controller. */
        TypedNumber: {
            /**
             * Format: double
             * @description The number.
             */
            value: number;
            /**
             * @description Its unit: of mass per revolution, or that of the form in which the meter's controller takes it.
             * @enum {string}
             */
            unit?: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev" | "kg" | "g" | "t" | "lb" | "oz" | "ton-us" | "ton-uk" | "L" | "m3" | "bu-us" | "bu-imp" | "ft3" | "kg/min" | "g/s" | "lb/min";
        };
        /** @description One part of the uncertainty. */
        UncertaintyPart: {
            /**
             * @description Where it comes from: `catches` (scatter, weighing, counting), `scale` (span, common to all), `shared-tare` or `points-not-caught`.
             * @example catches
             * @example scale
             * @example shared-tare
             * @example points-not-caught
             */
            source: string;
            /** @description Standard uncertainty, relative. */
            relative: components["schemas"]["RatioQuantity"];
        };
        /** @description One unit. */
        UnitAnswer: {
            /** @description The symbol as payloads write it; case counts. */
            symbol: string;
            /** @description What it measures, as the schemas of quantities are named: `mass` for MassQuantity. */
            dimension: string;
            /** @description Exact factor: a value in this unit times the factor, plus `offsetInSi` where there is one, is the value in the SI unit of the dimension (kg, m, s, Pa, K, revolutions as a plain count). */
            toSi: components["schemas"]["FactorAnswer"];
            /**
             * Format: double
             * @description What is added after the factor: the SI value of zero in this unit, in kelvin for a temperature. Absent for zero, which every other unit has.
             */
            offsetInSi?: number;
            /** @description Code in the Unified Code for Units of Measure. */
            ucum?: string;
            /** @description Common code of UN/ECE Recommendation 20. */
            unitedNations?: string;
            /** @description Unit code of the AgGateway ADAPT standard. */
            adapt?: string;
            /** @description What a reader must know, for example which acre is meant. */
            note?: string;
        };
        /** @description Every unit that payloads take. */
        UnitsAnswer: {
            /** @description The units, ordered by dimension; the first of each dimension is its usual metric unit. */
            units: components["schemas"]["UnitAnswer"][];
        };
        /** @description Day-to-day component from history. */
        UsedDayToDay: {
            /** @description Standard deviation between days, relative, as counted; a finding says when the history shows more. */
            value: components["schemas"]["RatioQuantity"];
            /**
             * Format: int32
             * @description Tests that it comes from.
             */
            tests: number;
        };
        /** @description An earlier test that was used. */
        UsedEarlierTest: {
            /** @description Id of the test. */
            test: string;
            /**
             * Format: date-time
             * @description When it was made.
             */
            occurredAt: string;
        };
        /** @description What a stored test took from the history instead of defaults; absent members took nothing from it. */
        UsedHistory: {
            /** @description Repeatability from earlier catches of the series (meter, element, setting and product). */
            repeatability?: components["schemas"]["UsedRepeatability"];
            /** @description Day-to-day component from earlier tests of the series. */
            dayToDay?: components["schemas"]["UsedDayToDay"];
            /** @description The check of the scale whose error was corrected. */
            scaleCheck?: components["schemas"]["UsedScaleCheck"];
            /** @description The adopted value that the test was compared with. */
            valueInForce?: components["schemas"]["UsedValueInForce"];
            /** @description The last test of the series, which the test was compared with because nothing had been adopted. */
            startValue?: components["schemas"]["UsedStartValue"];
            /** @description The stored test of another set-up that was put beside this one; the evaluation says under secondTest whether it bears this one out. */
            earlierTest?: components["schemas"]["UsedEarlierTest"];
        };
        /** @description Repeatability from history. */
        UsedRepeatability: {
            /** @description Standard deviation of one catch, relative. */
            value: components["schemas"]["RatioQuantity"];
            /**
             * Format: double
             * @description Its degrees of freedom, at most 15.
             */
            degreesOfFreedom: number;
            /**
             * Format: int32
             * @description Tests that it comes from.
             */
            tests: number;
            /**
             * Format: int32
             * @description Catches that it comes from.
             */
            catches: number;
        };
        /** @description A scale check that was used. */
        UsedScaleCheck: {
            /** @description Id of the check. */
            check: string;
            /**
             * Format: date-time
             * @description When it was made.
             */
            occurredAt: string;
            /** @description The span error that was corrected. */
            error: components["schemas"]["RatioQuantity"];
            /** @description Its standard uncertainty. */
            standardUncertainty: components["schemas"]["RatioQuantity"];
            /** @description True when the scale failed it; absent when it passed. */
            failed?: boolean;
        };
        /** @description A value that was measured and never adopted, to compare with. */
        UsedStartValue: {
            /** @description Id of the test that measured it. */
            test: string;
            /**
             * Format: date-time
             * @description When that was made.
             */
            occurredAt: string;
            /** @description The value. */
            value: components["schemas"]["ReferenceOfTest"];
        };
        /** @description A value in force that was used. */
        UsedValueInForce: {
            /** @description Id of the adoption. */
            adoption: string;
            /**
             * Format: date-time
             * @description Since when it is in force.
             */
            since: string;
            /** @description The value. */
            value: components["schemas"]["ReferenceOfTest"];
        };
        /** @description A value in force: the number in the controller, since when, and under which conditions it was found. */
        ValueInForceAnswer: {
            /** @description Id of the machine. */
            machine: string;
            /** @description Position of the meter. */
            meter: string;
            /** @description Metering element. */
            element: string;
            /** @description Setting of the meter; absent for none. */
            setting?: string;
            /** @description Id of the product. */
            product: string;
            /** @description The value, and the gravest of what was noticed about it, in sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description The mass per revolution that the controller uses. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description The number typed in. */
            typedIn: components["schemas"]["AnyQuantity"];
            /** @description Id of the adoption. */
            adoption: string;
            /**
             * Format: date-time
             * @description Since when, with the offset it was entered with.
             */
            since: string;
            /**
             * Format: date
             * @description The date of that in the machine's time zone.
             */
            sinceLocalDate: string;
            /** @description Who adopted it. */
            recordedBy: string;
            /** @description Why. */
            reason: string;
            /** @description All that spoke against the number when it was typed in, each with the reason given; absent when nothing did. */
            despite?: components["schemas"]["Despite"][];
            /** @description Id of the lot that it was found with. */
            lot?: string;
            /** @description Treatment of that lot. */
            treatment?: string;
            /** @description Id of the test that it rests on; absent when stated by hand. */
            test?: string;
            /** @description What that test measured. */
            measured?: components["schemas"]["MeasuredMassPerRevolution"];
            /** @description Conditions of that test, as entered. */
            conditions?: components["schemas"]["Conditions"];
            /** @description The test that superseded the one it rests on: adopt its value. */
            basisSupersededBy?: components["schemas"]["Supersedes"];
            /** @description What was noticed. Codes known today: `adopted-despite`, `fits-other-product`, `adopted-otherwise`, `basis-superseded`, `scale-check-failed-later`, `more-than-the-element-holds`, `fill-unlike-expected`, `unlike-other-products`. */
            findings: components["schemas"]["FindingAnswer"][];
        };
        /** @description A page of a list. */
        ValueInForceAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["ValueInForceAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description Mass per revolution of an element with the product. */
        ValueOfElement: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description The element. */
            element: string;
            /**
             * @description Where it comes from: a `value-in-force`, the plan's `start-value`, or the volume that the element displaces (`displacement`).
             * @example value-in-force
             * @example start-value
             * @example displacement
             */
            from: string;
        };
        /** @description A mass per revolution in force. */
        ValueOfLotBefore: {
            /**
             * Format: double
             * @description The number, in the unit beside it. No default.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev";
            /** @description Its standard uncertainty, relative. Default 2 %: default of a value in force: judgement, no published source. Range: above 0 and up to 50 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
        };
        /** @description A number as a controller holds it: exactly one of pulsesPerDistance, pulses with their distance, distancePerPulse and wheelCircumference. */
        ValueOfSensor: {
            /** @description Pulses per distance. No default. Range: above 0 and up to 10000000 pulses/100m. */
            pulsesPerDistance?: components["schemas"]["PulsesPerDistanceQuantity"];
            /**
             * Format: double
             * @description Pulses as the controller shows them, a plain count over `distance`. No default.
             */
            pulses?: number;
            /** @description Distance over which the controller counts these pulses, for example 150 m; goes with pulses. No default. Range: 1 to 10000 m. */
            distance?: components["schemas"]["LengthQuantity"];
            /** @description Distance driven from one pulse to the next. No default. Range: above 0 and up to 100 m. */
            distancePerPulse?: components["schemas"]["LengthQuantity"];
            /** @description Rolling circumference of the wheel. No default. Range: above 0 and up to 100 m. */
            wheelCircumference?: components["schemas"]["LengthQuantity"];
        };
        /** @description What an element should deliver, and how a value compares with it. */
        VolumeCheckAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description What the headline is made of, for showing it in another language; its code is the verdict. */
            headlineParts?: components["schemas"]["SentenceParts"];
            /**
             * @description What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops).
             * @example usable
             * @example check-first
             * @example do-not-use
             */
            verdict: string;
            /** @description Expected mass per revolution: displacement times bulk density times fill efficiency. */
            expected: components["schemas"]["ExpectedMassPerRevolution"];
            /** @description Fill efficiency behind it. */
            fillEfficiency: components["schemas"]["ExpectedRatio"];
            /** @description Parts of the spread of the expected value. */
            spreadParts: components["schemas"]["SpreadPart"][];
            /** @description The expected value as the start value of a catch plan takes it. */
            startValue: components["schemas"]["ReferenceOfTest"];
            /** @description How the checked value compares; absent without one. */
            checked?: components["schemas"]["CheckedAnswer"];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. No element was tested here. Codes known today: `more-than-the-element-holds`, `fill-unlike-expected`. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description Version of the engine that answered. */
            engineVersion: string;
        };
        /** @description One line of the answer to many questions: the result of one of them, or the problem that it has. */
        VolumeCheckAnswerBatchLine: {
            /**
             * Format: int64
             * @description The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row 1.
             */
            line: number;
            /** @description What the table calls the test; absent when no table was sent. */
            test?: string;
            /** @description What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing there or no table was sent. */
            given?: components["schemas"]["GivenCell"][];
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["VolumeCheckAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A metering element and a product. The fill efficiency is stated, or learnedFrom an earlier product, or taken by default. */
        VolumeCheckRequest: {
            /** @description What the owner calls the element. */
            element?: string;
            /**
             * @description How the element carries product: `closed-pockets` that are struck off (no more than 105 % of them can come out), `open-flutes` or an `auger` (up to 160 %, because a layer beyond them is dragged along; judgement). Default not known, which allows as much as open flutes.
             * @enum {string}
             */
            elementKind?: "closed-pockets" | "open-flutes" | "auger";
            /** @description Volume that one revolution of the element sweeps. Range: above 0 and up to 1000 L. */
            displacement: components["schemas"]["DisplacementOfElement"];
            /** @description Bulk density of the product. Range: 10 to 10000 kg/m3. */
            bulkDensity: components["schemas"]["DensityOfProduct"];
            /** @description Share of the swept volume that product fills; a little above 100 % where it settles. Default 90 %: median fill efficiency of metering elements; judgement, no published source. Range: 1 to 200 %. */
            fillEfficiency?: components["schemas"]["RatioQuantity"];
            /** @description How sure the fill efficiency is. Default 15 %: spread of fill efficiency from element to element, standard deviation of its logarithm; judgement, no published source. Range: 0 to 100 %. */
            fillEfficiencySpread?: components["schemas"]["RatioQuantity"];
            /** @description An earlier product on the same element, from which the fill efficiency is learned. */
            learnedFrom?: components["schemas"]["EarlierProduct"];
            /** @description A mass per revolution to be checked. No default. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution?: components["schemas"]["MassPerRevolutionToCheck"];
            /**
             * Format: double
             * @description Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
        };
        /** @description A volume flow, such as that of air. */
        VolumePerTimeQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "m3/h" | "m3/min" | "L/s" | "ft3/min";
        };
        /** @description A volume. */
        VolumeQuantity: {
            /**
             * Format: double
             * @description The number, in the unit beside it.
             */
            value: number;
            /**
             * @description The unit, written exactly as in `GET /v1/units`.
             * @enum {string}
             */
            unit: "L" | "m3" | "bu-us" | "bu-imp" | "ft3";
        };
        /** @description A nutrient that is wanted, or limited. */
        WantedNutrient: {
            /**
             * @description The nutrient in the form that the amount is stated in, as the element (N, P, K, S, and SO4-S for sulfur in sulfate) or as P2O5, K2O, SO3 or SO4. The answer speaks of it in the same form.
             * @enum {string}
             */
            nutrient: "N" | "P2O5" | "P" | "K2O" | "K" | "S" | "SO4-S" | "SO3" | "SO4";
            /** @description Amount per area. Zero only with `at-most` or `exactly`. Range: 0 to 10000 kg/ha. */
            amount: components["schemas"]["MassPerAreaQuantity"];
            /**
             * @description How the amount is meant: `at-least`, `exactly` or `at-most`. Default at-least: common practice, no published source.
             * @enum {string}
             */
            kind?: "at-least" | "exactly" | "at-most";
            /** @description With at-least: the most that may be given, credits included. No limit when left out. No default. Range: 0 to 10000 kg/ha. */
            maximum?: components["schemas"]["MassPerAreaQuantity"];
        };
        /** @description What would open an empty window, each by itself; absent where that alone is not enough. */
        WaysOutAnswer: {
            /** @description Highest ground speed, beside the lowest of the question. */
            maximumGroundSpeed?: components["schemas"]["SpeedQuantity"];
            /** @description Lowest ground speed, beside the highest of the question. */
            minimumGroundSpeed?: components["schemas"]["SpeedQuantity"];
            /** @description Highest rate, beside the lowest of the question. */
            maximumRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description Lowest rate, beside the highest of the question. */
            minimumRate?: components["schemas"]["MassPerAreaQuantity"];
            /** @description The rates shared out among as few elements as serve all ground speeds; empty where up to four do not. */
            shares: components["schemas"]["ShareOfRatesAnswer"][];
        };
        /** @description Weighings of one container, filled anew and struck off level each time. */
        WeighedVolumeOfProduct: {
            /** @description Volume of the container. Range: above 0 and up to 1000 m3. */
            volume: components["schemas"]["VolumeQuantity"];
            /** @description Largest error of that volume. Default 2 %: largest error of the volume of a bucket or box; judgement, no published source. Range: 0 to 50 %. */
            volumeTolerance?: components["schemas"]["RatioQuantity"];
            /** @description The scale. Default 0.5 %: largest error of a scale of which nothing is stated, as a share of the load; judgement, no published source. */
            scale?: components["schemas"]["ScaleOfTest"];
            /** @description Mass of the empty container, read once for all weighings. No default. Range: above 0 and up to 1000 t. */
            sharedTare?: components["schemas"]["MassQuantity"];
            /** @description Standard deviation of one filling. Default 2 %: one filling of a container, struck off level; judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
            repeatability?: components["schemas"]["RatioQuantity"];
            /** @description The weighings. */
            weighings: components["schemas"]["WeighingOfProduct"][];
        };
        /** @description One weighing. */
        WeighingAnswer: {
            /** @description Net mass, a known error of the scale corrected. */
            net: components["schemas"]["MassQuantity"];
            /** @description Its bulk density. */
            bulkDensity: components["schemas"]["BulkDensityQuantity"];
        };
        /** @description One weighing, as gross and tare (or the sharedTare) or as net. */
        WeighingOfProduct: {
            /** @description Mass with the container. No default. Range: above 0 and up to 1000 t. */
            gross?: components["schemas"]["MassQuantity"];
            /** @description Mass of the empty container. No default. Range: above 0 and up to 1000 t. */
            tare?: components["schemas"]["MassQuantity"];
            /** @description Net mass, where the scale was zeroed with the container. No default. Range: above 0 and up to 1000 t. */
            net?: components["schemas"]["MassQuantity"];
        };
        /** @description The width of a machine. */
        WidthAnswer: {
            /** @description Openers times spacing. */
            nominal: components["schemas"]["LengthQuantity"];
            /** @description Width that each pass covers anew. */
            effective: components["schemas"]["LengthQuantity"];
            /** @description Width that the controller reckons with. */
            inForce: components["schemas"]["LengthQuantity"];
            /** @description Nominal less effective width: positive where passes overlap, negative where strips are left. */
            overlap: components["schemas"]["LengthQuantity"];
            /** @description Overlap as a share of the width covered anew: product that a field takes beyond its area. */
            overlapShare: components["schemas"]["RatioQuantity"];
        };
        /** @description The width of a machine: built, driven and typed in. */
        WidthOfMachine: {
            /**
             * Format: int32
             * @description Number of openers.
             */
            openers: number;
            /** @description Distance between neighbouring openers. Range: 0.01 to 10 m. */
            spacing: components["schemas"]["LengthQuantity"];
            /** @description Measured distance from a mark on the machine to the same mark in the next pass. Default openers times spacing: judgement, no overlap and no gap between passes. Range: 0.01 to 200 m. */
            passToPass?: components["schemas"]["LengthQuantity"];
            /** @description Width typed into the controller. Default openers times spacing: common practice. Range: 0.01 to 200 m. */
            inForce?: components["schemas"]["LengthQuantity"];
        };
        /** @description A workspace as stored. */
        WorkspaceAnswer: {
            /** @description Its id; `local` for the one that every database begins with. */
            id: string;
            /**
             * Format: int64
             * @description 1 when created, one more with each change.
             */
            revision: number;
            /** @description Its keys open nothing; everything stays stored. */
            retired: boolean;
            /**
             * Format: date-time
             * @description When it was created (UTC).
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was changed last (UTC).
             */
            updatedAt: string;
            /** @description What it is called. */
            name: string;
        };
        /** @description A page of a list. */
        WorkspaceAnswerPage: {
            /** @description The records of this page. */
            items: components["schemas"]["WorkspaceAnswer"][];
            /**
             * Format: uri
             * @description Address of the next page; absent on the last one.
             */
            next?: string;
        };
        /** @description A workspace: what one farm, dealer or customer keeps, and what only its keys open. */
        WorkspaceRequest: {
            /** @description The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes one. May be repeated, unchanged, when replacing. */
            id?: string;
            /** @description What it is called. */
            name: string;
            /** @description Its keys open nothing; everything stays stored. Default false. */
            retired?: boolean;
        };
    };
    responses: {
        /** @description The request cannot be read as this contract: broken JSON, a wrong type, an unknown or duplicate member or query parameter. One error, with its place. */
        BadRequest: {
            headers: {
                /**
                 * @description Which credential is wanted and, where one came, what was wrong with it (RFC 6750).
                 * @example Bearer realm="calibration"
                 */
                "WWW-Authenticate"?: string;
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description A request with the same Idempotency-Key is being worked on; Retry-After says when to ask again. */
        Conflict: {
            headers: {
                /**
                 * @description Seconds to wait before the request is sent again.
                 * @example 1
                 */
                "Retry-After": number;
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The key lacks the scope that this operation needs. */
        Forbidden: {
            headers: {
                /**
                 * @description Which credential is wanted and, where one came, what was wrong with it (RFC 6750).
                 * @example Bearer realm="calibration"
                 */
                "WWW-Authenticate": string;
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description A backup from before this cursor took the place of the database. Read the list from its beginning. */
        Gone: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The service failed; nothing was stored. */
        InternalServerError: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The answer cannot be given in any of the media types asked for. */
        NotAcceptable: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description There is no record with this id. */
        NotFound: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The body is larger than the service takes: 1 MiB, unless its operator chose otherwise. */
        PayloadTooLarge: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Somebody changed the record since the revision named by If-Match. */
        PreconditionFailed: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description If-Match is missing. */
        PreconditionRequired: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The body came too slowly. */
        RequestTimeout: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The database cannot be used right now, or the service has more to do than it can; nothing was stored. Retry-After says when to try again. */
        ServiceUnavailable: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                /**
                 * @description Seconds to wait before the request is sent again.
                 * @example 1
                 */
                "Retry-After": number;
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description More requests than a policy of RateLimit-Policy allows. Retry-After says when to ask again. */
        TooManyRequests: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                /**
                 * @description Seconds to wait before the request is sent again.
                 * @example 1
                 */
                "Retry-After": number;
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description No key came, or one that opens nothing. WWW-Authenticate and the code say which. */
        Unauthorized: {
            headers: {
                /**
                 * @description Which credential is wanted and, where one came, what was wrong with it (RFC 6750).
                 * @example Bearer realm="calibration"
                 */
                "WWW-Authenticate": string;
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. */
        UnprocessableEntity: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The body is not application/json in UTF-8, or it is compressed. */
        UnsupportedMediaType: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                RateLimit: components["headers"]["RateLimit"];
                /**
                 * @description With a compressed body: that bodies are taken only as they are.
                 * @example identity
                 */
                "Accept-Encoding"?: string;
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
    parameters: {
        /**
         * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
         * @example 100
         */
        Limit: string;
        /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
        Separator: "comma" | "semicolon";
        /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
        Bom: "yes" | "no";
        /**
         * @description Where to go on: the cursor of the previous page's next link.
         * @example eyJ2IjoxfQ
         */
        Cursor: string;
        /**
         * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
         * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
         */
        IdempotencyKey: string;
        /**
         * @description Only the machine with this id.
         * @example 019a0000-0000-7000-8000-000000000000
         */
        Machine: string;
        /**
         * @description Only this position of a meter.
         * @example rear
         */
        Meter: string;
        /**
         * @description Only this metering element.
         * @example standard roller
         */
        Element: string;
        /**
         * @description Only the product with this id.
         * @example 019a0000-0000-7000-8000-000000000000
         */
        Product: string;
        /**
         * @description Only the lot with this id.
         * @example 019a0000-0000-7000-8000-000000000000
         */
        Lot: string;
        /**
         * @description Only the scale with this id.
         * @example 019a0000-0000-7000-8000-000000000000
         */
        Scale: string;
        /**
         * @description Only the plan with this id.
         * @example 019a0000-0000-7000-8000-000000000000
         */
        Plan: string;
        /**
         * @description What happened at or after this instant, RFC 3339.
         * @example 2026-04-01T00:00:00Z
         */
        From: string;
        /**
         * @description What happened before this instant, RFC 3339.
         * @example 2026-05-01T00:00:00Z
         */
        Until: string;
        /** @description newest-first (the default) or oldest-first, by the time when it happened. */
        Order: "newest-first" | "oldest-first";
        /** @description Units of the answer; as-asked keeps what was entered. */
        Units: "as-asked" | "metric" | "us";
        /**
         * @description The ETag that you have; an unchanged record answers 304 without a body.
         * @example "r3"
         */
        IfNoneMatch: string;
        /** @description Retired records too: true or false. Default false. */
        IncludeRetired: boolean;
        /**
         * @description Id of the record.
         * @example 019a0000-0000-7000-8000-000000000000
         */
        Id: string;
        /**
         * @description The ETag of the revision that you are changing; without it the change is refused.
         * @example "r3"
         */
        IfMatch: string;
    };
    requestBodies: never;
    headers: {
        /**
         * @description The limits that hold for the sender (draft-ietf-httpapi-ratelimit-headers-10): for each its name, its quota q, and the seconds w in which the quota may be used up.
         * @example "address";q=6000;w=60, "key";q=3000;w=60
         */
        "RateLimit-Policy": string;
        /**
         * @description How the sender stands with each limit: requests r that remain, and seconds t until the whole quota is back.
         * @example "address";r=5990;t=42, "key";r=2990;t=42
         */
        RateLimit: string;
    };
    pathItems: never;
}
export type AdoptionAnswer = components['schemas']['AdoptionAnswer'];
export type AdoptionRequest = components['schemas']['AdoptionRequest'];
export type AgreementAnswer = components['schemas']['AgreementAnswer'];
export type AirFlowLimits = components['schemas']['AirFlowLimits'];
export type AirFlowWindow = components['schemas']['AirFlowWindow'];
export type AirLoadAnswer = components['schemas']['AirLoadAnswer'];
export type AmountOfNutrient = components['schemas']['AmountOfNutrient'];
export type AnyQuantity = components['schemas']['AnyQuantity'];
export type AreaQuantity = components['schemas']['AreaQuantity'];
export type AssumptionAnswer = components['schemas']['AssumptionAnswer'];
export type AuditItem = components['schemas']['AuditItem'];
export type AuditItemPage = components['schemas']['AuditItemPage'];
export type BlendShare = components['schemas']['BlendShare'];
export type BothRotationLimits = components['schemas']['BothRotationLimits'];
export type BoundAnswer = components['schemas']['BoundAnswer'];
export type BulkDensityAnswer = components['schemas']['BulkDensityAnswer'];
export type BulkDensityAnswerBatchLine = components['schemas']['BulkDensityAnswerBatchLine'];
export type BulkDensityQuantity = components['schemas']['BulkDensityQuantity'];
export type BulkDensityRequest = components['schemas']['BulkDensityRequest'];
export type CapacityAnswer = components['schemas']['CapacityAnswer'];
export type CatchAnswer = components['schemas']['CatchAnswer'];
export type CatchOfTest = components['schemas']['CatchOfTest'];
export type CatchPlanAnswer = components['schemas']['CatchPlanAnswer'];
export type CatchPlanAnswerBatchLine = components['schemas']['CatchPlanAnswerBatchLine'];
export type CatchPlanRequest = components['schemas']['CatchPlanRequest'];
export type CatchTestAnswer = components['schemas']['CatchTestAnswer'];
export type CatchTestAnswerBatchLine = components['schemas']['CatchTestAnswerBatchLine'];
export type CatchTestRecordAnswer = components['schemas']['CatchTestRecordAnswer'];
export type CatchTestRequest = components['schemas']['CatchTestRequest'];
export type CaughtPointsOfTest = components['schemas']['CaughtPointsOfTest'];
export type CautionAnswer = components['schemas']['CautionAnswer'];
export type ChangeItem = components['schemas']['ChangeItem'];
export type ChangePage = components['schemas']['ChangePage'];
export type CheckedAnswer = components['schemas']['CheckedAnswer'];
export type CodeAnswer = components['schemas']['CodeAnswer'];
export type CodesAnswer = components['schemas']['CodesAnswer'];
export type Conditions = components['schemas']['Conditions'];
export type ContainerAnswer = components['schemas']['ContainerAnswer'];
export type ContainerAnswerPage = components['schemas']['ContainerAnswerPage'];
export type ContainerOfPlan = components['schemas']['ContainerOfPlan'];
export type ContainerOfTest = components['schemas']['ContainerOfTest'];
export type ContainerRequest = components['schemas']['ContainerRequest'];
export type ControllerEntryOfTest = components['schemas']['ControllerEntryOfTest'];
export type CornerAnswer = components['schemas']['CornerAnswer'];
export type CorrectionAnswer = components['schemas']['CorrectionAnswer'];
export type CostOfNutrient = components['schemas']['CostOfNutrient'];
export type CostPerUnit = components['schemas']['CostPerUnit'];
export type CountAnswer = components['schemas']['CountAnswer'];
export type CountOfPlants = components['schemas']['CountOfPlants'];
export type CountPerAreaQuantity = components['schemas']['CountPerAreaQuantity'];
export type CountPerLengthQuantity = components['schemas']['CountPerLengthQuantity'];
export type CountPerMassQuantity = components['schemas']['CountPerMassQuantity'];
export type CountedShare = components['schemas']['CountedShare'];
export type CreditedNutrient = components['schemas']['CreditedNutrient'];
export type DeliveryPoint = components['schemas']['DeliveryPoint'];
export type DensityOfLot = components['schemas']['DensityOfLot'];
export type DensityOfProduct = components['schemas']['DensityOfProduct'];
export type DensityUncertaintyPart = components['schemas']['DensityUncertaintyPart'];
export type Despite = components['schemas']['Despite'];
export type DifferenceAnswer = components['schemas']['DifferenceAnswer'];
export type DisplacementOfElement = components['schemas']['DisplacementOfElement'];
export type DisplacementWindowAnswer = components['schemas']['DisplacementWindowAnswer'];
export type DistanceEffectAnswer = components['schemas']['DistanceEffectAnswer'];
export type DistanceSensorAnswer = components['schemas']['DistanceSensorAnswer'];
export type DistanceSensorAnswerBatchLine = components['schemas']['DistanceSensorAnswerBatchLine'];
export type DistanceSensorRequest = components['schemas']['DistanceSensorRequest'];
export type DriveWheelOfMachine = components['schemas']['DriveWheelOfMachine'];
export type DriveWheelTurnsAnswer = components['schemas']['DriveWheelTurnsAnswer'];
export type DriveWheelTurnsAnswerBatchLine = components['schemas']['DriveWheelTurnsAnswerBatchLine'];
export type DriveWheelTurnsRequest = components['schemas']['DriveWheelTurnsRequest'];
export type EarlierMassPerRevolution = components['schemas']['EarlierMassPerRevolution'];
export type EarlierProduct = components['schemas']['EarlierProduct'];
export type EarlierTestOfTest = components['schemas']['EarlierTestOfTest'];
export type EffectAnswer = components['schemas']['EffectAnswer'];
export type EffectOfLot = components['schemas']['EffectOfLot'];
export type ElementAnswer = components['schemas']['ElementAnswer'];
export type ElementFitAnswer = components['schemas']['ElementFitAnswer'];
export type ElementFitAnswerBatchLine = components['schemas']['ElementFitAnswerBatchLine'];
export type ElementFitRequest = components['schemas']['ElementFitRequest'];
export type ElementOfMachine = components['schemas']['ElementOfMachine'];
export type ElementOfMeter = components['schemas']['ElementOfMeter'];
export type ElementToFit = components['schemas']['ElementToFit'];
export type EntryAnswer = components['schemas']['EntryAnswer'];
export type EntryOfSensor = components['schemas']['EntryOfSensor'];
export type Exclusion = components['schemas']['Exclusion'];
export type ExpectedMassPerRevolution = components['schemas']['ExpectedMassPerRevolution'];
export type ExpectedRatio = components['schemas']['ExpectedRatio'];
export type ExpectedStand = components['schemas']['ExpectedStand'];
export type FactorAnswer = components['schemas']['FactorAnswer'];
export type FanAnswer = components['schemas']['FanAnswer'];
export type FanOfMachine = components['schemas']['FanOfMachine'];
export type FanSpeedWindow = components['schemas']['FanSpeedWindow'];
export type FilledTankOfProduct = components['schemas']['FilledTankOfProduct'];
export type FindingAnswer = components['schemas']['FindingAnswer'];
export type FittedElement = components['schemas']['FittedElement'];
export type FittingElementAnswer = components['schemas']['FittingElementAnswer'];
export type GivenCell = components['schemas']['GivenCell'];
export type GroundOfCount = components['schemas']['GroundOfCount'];
export type HistoryItem = components['schemas']['HistoryItem'];
export type HistoryItemPage = components['schemas']['HistoryItemPage'];
export type HistoryValue = components['schemas']['HistoryValue'];
export type InnerWindowAnswer = components['schemas']['InnerWindowAnswer'];
export type KeyAnswer = components['schemas']['KeyAnswer'];
export type KeyAnswerPage = components['schemas']['KeyAnswerPage'];
export type KeyRequest = components['schemas']['KeyRequest'];
export type KnownMassReadingOfCheck = components['schemas']['KnownMassReadingOfCheck'];
export type KnownScaleErrorOfTest = components['schemas']['KnownScaleErrorOfTest'];
export type LearnedAnswer = components['schemas']['LearnedAnswer'];
export type LengthQuantity = components['schemas']['LengthQuantity'];
export type LikelyMistakeAnswer = components['schemas']['LikelyMistakeAnswer'];
export type LimitSourceAnswer = components['schemas']['LimitSourceAnswer'];
export type LocalLimitWithSeed = components['schemas']['LocalLimitWithSeed'];
export type LotAnswer = components['schemas']['LotAnswer'];
export type LotAnswerPage = components['schemas']['LotAnswerPage'];
export type LotOfChange = components['schemas']['LotOfChange'];
export type LotReason = components['schemas']['LotReason'];
export type LotRequest = components['schemas']['LotRequest'];
export type LotUncertainty = components['schemas']['LotUncertainty'];
export type MachineAnswer = components['schemas']['MachineAnswer'];
export type MachineAnswerPage = components['schemas']['MachineAnswerPage'];
export type MachineRequest = components['schemas']['MachineRequest'];
export type MarginAnswer = components['schemas']['MarginAnswer'];
export type MassPerAreaQuantity = components['schemas']['MassPerAreaQuantity'];
export type MassPerRevolutionQuantity = components['schemas']['MassPerRevolutionQuantity'];
export type MassPerRevolutionToCheck = components['schemas']['MassPerRevolutionToCheck'];
export type MassPerThousandQuantity = components['schemas']['MassPerThousandQuantity'];
export type MassPerTimeQuantity = components['schemas']['MassPerTimeQuantity'];
export type MassQuantity = components['schemas']['MassQuantity'];
export type MeasuredBulkDensity = components['schemas']['MeasuredBulkDensity'];
export type MeasuredLength = components['schemas']['MeasuredLength'];
export type MeasuredMassPerArea = components['schemas']['MeasuredMassPerArea'];
export type MeasuredMassPerRevolution = components['schemas']['MeasuredMassPerRevolution'];
export type MeasuredPulsesPerDistance = components['schemas']['MeasuredPulsesPerDistance'];
export type MeasuredRatio = components['schemas']['MeasuredRatio'];
export type MeterOfFieldPlan = components['schemas']['MeterOfFieldPlan'];
export type MeterOfMachine = components['schemas']['MeterOfMachine'];
export type MeterOfPlan = components['schemas']['MeterOfPlan'];
export type MeterPlanAnswer = components['schemas']['MeterPlanAnswer'];
export type MeterSetUpAnswer = components['schemas']['MeterSetUpAnswer'];
export type MeterSpeedAnswer = components['schemas']['MeterSpeedAnswer'];
export type MeterSpeedAnswerBatchLine = components['schemas']['MeterSpeedAnswerBatchLine'];
export type MeterSpeedRequest = components['schemas']['MeterSpeedRequest'];
export type MissingOfPlan = components['schemas']['MissingOfPlan'];
export type MoistureAnswer = components['schemas']['MoistureAnswer'];
export type Money = components['schemas']['Money'];
export type NewKeyAnswer = components['schemas']['NewKeyAnswer'];
export type NewLotAnswer = components['schemas']['NewLotAnswer'];
export type NewLotAnswerBatchLine = components['schemas']['NewLotAnswerBatchLine'];
export type NewLotRequest = components['schemas']['NewLotRequest'];
export type NutrientLine = components['schemas']['NutrientLine'];
export type NutrientLoadAnswer = components['schemas']['NutrientLoadAnswer'];
export type ObstacleOfPlan = components['schemas']['ObstacleOfPlan'];
export type OtherContainerOfTest = components['schemas']['OtherContainerOfTest'];
export type OtherDeliveryOfTest = components['schemas']['OtherDeliveryOfTest'];
export type OutletAnswer = components['schemas']['OutletAnswer'];
export type PackageOfSeed = components['schemas']['PackageOfSeed'];
export type PackagePrice = components['schemas']['PackagePrice'];
export type PackagesAnswer = components['schemas']['PackagesAnswer'];
export type PlanAnswer = components['schemas']['PlanAnswer'];
export type PlanAnswerPage = components['schemas']['PlanAnswerPage'];
export type PlanRequest = components['schemas']['PlanRequest'];
export type PlanSetUpAnswer = components['schemas']['PlanSetUpAnswer'];
export type PredictedValueOfTest = components['schemas']['PredictedValueOfTest'];
export type PressureQuantity = components['schemas']['PressureQuantity'];
export type Price = components['schemas']['Price'];
export type PrintedLimit = components['schemas']['PrintedLimit'];
export type PriorOfShare = components['schemas']['PriorOfShare'];
export type Problem = components['schemas']['Problem'];
export type ProblemError = components['schemas']['ProblemError'];
export type ProductAnswer = components['schemas']['ProductAnswer'];
export type ProductAnswerPage = components['schemas']['ProductAnswerPage'];
export type ProductInAir = components['schemas']['ProductInAir'];
export type ProductLoadAnswer = components['schemas']['ProductLoadAnswer'];
export type ProductNeedAnswer = components['schemas']['ProductNeedAnswer'];
export type ProductOfTest = components['schemas']['ProductOfTest'];
export type ProductOffer = components['schemas']['ProductOffer'];
export type ProductRateAnswer = components['schemas']['ProductRateAnswer'];
export type ProductRateAnswerBatchLine = components['schemas']['ProductRateAnswerBatchLine'];
export type ProductRateLine = components['schemas']['ProductRateLine'];
export type ProductRateRequest = components['schemas']['ProductRateRequest'];
export type ProductRequest = components['schemas']['ProductRequest'];
export type ProductWithSeed = components['schemas']['ProductWithSeed'];
export type PublishedDensityAnswer = components['schemas']['PublishedDensityAnswer'];
export type PulsesPerDistanceQuantity = components['schemas']['PulsesPerDistanceQuantity'];
export type PulsesPerRevolutionQuantity = components['schemas']['PulsesPerRevolutionQuantity'];
export type RateAcceptanceAnswer = components['schemas']['RateAcceptanceAnswer'];
export type RateAnswer = components['schemas']['RateAnswer'];
export type RateFromElsewhere = components['schemas']['RateFromElsewhere'];
export type RateOfLot = components['schemas']['RateOfLot'];
export type RateWindowAnswer = components['schemas']['RateWindowAnswer'];
export type RatioQuantity = components['schemas']['RatioQuantity'];
export type ReasonAnswer = components['schemas']['ReasonAnswer'];
export type RecomputationAnswer = components['schemas']['RecomputationAnswer'];
export type RecordCatchTestRequest = components['schemas']['RecordCatchTestRequest'];
export type ReferenceAnswer = components['schemas']['ReferenceAnswer'];
export type ReferenceOfTest = components['schemas']['ReferenceOfTest'];
export type RefusalItem = components['schemas']['RefusalItem'];
export type RefusalItemPage = components['schemas']['RefusalItemPage'];
export type RestorePoint = components['schemas']['RestorePoint'];
export type RevocationRequest = components['schemas']['RevocationRequest'];
export type RevolutionsQuantity = components['schemas']['RevolutionsQuantity'];
export type RiskPart = components['schemas']['RiskPart'];
export type RollingRun = components['schemas']['RollingRun'];
export type RotationLimits = components['schemas']['RotationLimits'];
export type RotationQuantity = components['schemas']['RotationQuantity'];
export type RotationRequest = components['schemas']['RotationRequest'];
export type RunAgreementAnswer = components['schemas']['RunAgreementAnswer'];
export type RunAnswer = components['schemas']['RunAnswer'];
export type RunOfSensor = components['schemas']['RunOfSensor'];
export type RunUncertaintyPart = components['schemas']['RunUncertaintyPart'];
export type SampleOfSeed = components['schemas']['SampleOfSeed'];
export type ScaleAnswer = components['schemas']['ScaleAnswer'];
export type ScaleAnswerPage = components['schemas']['ScaleAnswerPage'];
export type ScaleCheckAnswer = components['schemas']['ScaleCheckAnswer'];
export type ScaleCheckRequest = components['schemas']['ScaleCheckRequest'];
export type ScaleOfTest = components['schemas']['ScaleOfTest'];
export type ScaleRequest = components['schemas']['ScaleRequest'];
export type ScatterAnswer = components['schemas']['ScatterAnswer'];
export type SecondTestAnswer = components['schemas']['SecondTestAnswer'];
export type SeedCostAnswer = components['schemas']['SeedCostAnswer'];
export type SeedRowLimitAnswer = components['schemas']['SeedRowLimitAnswer'];
export type SeedRowLimitAnswerBatchLine = components['schemas']['SeedRowLimitAnswerBatchLine'];
export type SeedRowLimitOfSource = components['schemas']['SeedRowLimitOfSource'];
export type SeedRowLimitRequest = components['schemas']['SeedRowLimitRequest'];
export type SeedRowOfPlan = components['schemas']['SeedRowOfPlan'];
export type SeedingRateAnswer = components['schemas']['SeedingRateAnswer'];
export type SeedingRateAnswerBatchLine = components['schemas']['SeedingRateAnswerBatchLine'];
export type SeedingRateRequest = components['schemas']['SeedingRateRequest'];
export type SensorEntryAnswer = components['schemas']['SensorEntryAnswer'];
export type SentenceParts = components['schemas']['SentenceParts'];
export type SentenceValue = components['schemas']['SentenceValue'];
export type ShareEstimate = components['schemas']['ShareEstimate'];
export type ShareOfNutrient = components['schemas']['ShareOfNutrient'];
export type ShareOfRatesAnswer = components['schemas']['ShareOfRatesAnswer'];
export type ShareRange = components['schemas']['ShareRange'];
export type ShareToCome = components['schemas']['ShareToCome'];
export type SownSeed = components['schemas']['SownSeed'];
export type SpeedCheckAnswer = components['schemas']['SpeedCheckAnswer'];
export type SpeedQuantity = components['schemas']['SpeedQuantity'];
export type SpeedRange = components['schemas']['SpeedRange'];
export type SpeedWindowAnswer = components['schemas']['SpeedWindowAnswer'];
export type SpreadPart = components['schemas']['SpreadPart'];
export type StandCountAnswer = components['schemas']['StandCountAnswer'];
export type StandCountAnswerBatchLine = components['schemas']['StandCountAnswerBatchLine'];
export type StandCountRequest = components['schemas']['StandCountRequest'];
export type StandEstimate = components['schemas']['StandEstimate'];
export type StandLossAnswer = components['schemas']['StandLossAnswer'];
export type StandLossOfProduct = components['schemas']['StandLossOfProduct'];
export type StandOfPlan = components['schemas']['StandOfPlan'];
export type StandRiskAnswer = components['schemas']['StandRiskAnswer'];
export type StandRiskAnswerBatchLine = components['schemas']['StandRiskAnswerBatchLine'];
export type StandRiskRequest = components['schemas']['StandRiskRequest'];
export type StandUncertainty = components['schemas']['StandUncertainty'];
export type StartValueOfLot = components['schemas']['StartValueOfLot'];
export type StatedDensityOfProduct = components['schemas']['StatedDensityOfProduct'];
export type StatedRateAnswer = components['schemas']['StatedRateAnswer'];
export type StatedReductionAnswer = components['schemas']['StatedReductionAnswer'];
export type StepAnswer = components['schemas']['StepAnswer'];
export type StopAnswer = components['schemas']['StopAnswer'];
export type StopsInField = components['schemas']['StopsInField'];
export type Supersedes = components['schemas']['Supersedes'];
export type SuppliedNutrient = components['schemas']['SuppliedNutrient'];
export type TankAnswer = components['schemas']['TankAnswer'];
export type TankOfMachine = components['schemas']['TankOfMachine'];
export type TankOfProduct = components['schemas']['TankOfProduct'];
export type TemperatureQuantity = components['schemas']['TemperatureQuantity'];
export type TestWeightOfProduct = components['schemas']['TestWeightOfProduct'];
export type TimeQuantity = components['schemas']['TimeQuantity'];
export type TurnTestAnswer = components['schemas']['TurnTestAnswer'];
export type TurnTestOfWheel = components['schemas']['TurnTestOfWheel'];
export type TurnsAnswer = components['schemas']['TurnsAnswer'];
export type TypedNumber = components['schemas']['TypedNumber'];
export type UncertaintyPart = components['schemas']['UncertaintyPart'];
export type UnitAnswer = components['schemas']['UnitAnswer'];
export type UnitsAnswer = components['schemas']['UnitsAnswer'];
export type UsedDayToDay = components['schemas']['UsedDayToDay'];
export type UsedEarlierTest = components['schemas']['UsedEarlierTest'];
export type UsedHistory = components['schemas']['UsedHistory'];
export type UsedRepeatability = components['schemas']['UsedRepeatability'];
export type UsedScaleCheck = components['schemas']['UsedScaleCheck'];
export type UsedStartValue = components['schemas']['UsedStartValue'];
export type UsedValueInForce = components['schemas']['UsedValueInForce'];
export type ValueInForceAnswer = components['schemas']['ValueInForceAnswer'];
export type ValueInForceAnswerPage = components['schemas']['ValueInForceAnswerPage'];
export type ValueOfElement = components['schemas']['ValueOfElement'];
export type ValueOfLotBefore = components['schemas']['ValueOfLotBefore'];
export type ValueOfSensor = components['schemas']['ValueOfSensor'];
export type VolumeCheckAnswer = components['schemas']['VolumeCheckAnswer'];
export type VolumeCheckAnswerBatchLine = components['schemas']['VolumeCheckAnswerBatchLine'];
export type VolumeCheckRequest = components['schemas']['VolumeCheckRequest'];
export type VolumePerTimeQuantity = components['schemas']['VolumePerTimeQuantity'];
export type VolumeQuantity = components['schemas']['VolumeQuantity'];
export type WantedNutrient = components['schemas']['WantedNutrient'];
export type WaysOutAnswer = components['schemas']['WaysOutAnswer'];
export type WeighedVolumeOfProduct = components['schemas']['WeighedVolumeOfProduct'];
export type WeighingAnswer = components['schemas']['WeighingAnswer'];
export type WeighingOfProduct = components['schemas']['WeighingOfProduct'];
export type WidthAnswer = components['schemas']['WidthAnswer'];
export type WidthOfMachine = components['schemas']['WidthOfMachine'];
export type WorkspaceAnswer = components['schemas']['WorkspaceAnswer'];
export type WorkspaceAnswerPage = components['schemas']['WorkspaceAnswerPage'];
export type WorkspaceRequest = components['schemas']['WorkspaceRequest'];
export type ResponseBadRequest = components['responses']['BadRequest'];
export type ResponseConflict = components['responses']['Conflict'];
export type ResponseForbidden = components['responses']['Forbidden'];
export type ResponseGone = components['responses']['Gone'];
export type ResponseInternalServerError = components['responses']['InternalServerError'];
export type ResponseNotAcceptable = components['responses']['NotAcceptable'];
export type ResponseNotFound = components['responses']['NotFound'];
export type ResponsePayloadTooLarge = components['responses']['PayloadTooLarge'];
export type ResponsePreconditionFailed = components['responses']['PreconditionFailed'];
export type ResponsePreconditionRequired = components['responses']['PreconditionRequired'];
export type ResponseRequestTimeout = components['responses']['RequestTimeout'];
export type ResponseServiceUnavailable = components['responses']['ServiceUnavailable'];
export type ResponseTooManyRequests = components['responses']['TooManyRequests'];
export type ResponseUnauthorized = components['responses']['Unauthorized'];
export type ResponseUnprocessableEntity = components['responses']['UnprocessableEntity'];
export type ResponseUnsupportedMediaType = components['responses']['UnsupportedMediaType'];
export type ParameterLimit = components['parameters']['Limit'];
export type ParameterSeparator = components['parameters']['Separator'];
export type ParameterBom = components['parameters']['Bom'];
export type ParameterCursor = components['parameters']['Cursor'];
export type ParameterIdempotencyKey = components['parameters']['IdempotencyKey'];
export type ParameterMachine = components['parameters']['Machine'];
export type ParameterMeter = components['parameters']['Meter'];
export type ParameterElement = components['parameters']['Element'];
export type ParameterProduct = components['parameters']['Product'];
export type ParameterLot = components['parameters']['Lot'];
export type ParameterScale = components['parameters']['Scale'];
export type ParameterPlan = components['parameters']['Plan'];
export type ParameterFrom = components['parameters']['From'];
export type ParameterUntil = components['parameters']['Until'];
export type ParameterOrder = components['parameters']['Order'];
export type ParameterUnits = components['parameters']['Units'];
export type ParameterIfNoneMatch = components['parameters']['IfNoneMatch'];
export type ParameterIncludeRetired = components['parameters']['IncludeRetired'];
export type ParameterId = components['parameters']['Id'];
export type ParameterIfMatch = components['parameters']['IfMatch'];
export type HeaderRateLimitPolicy = components['headers']['RateLimit-Policy'];
export type HeaderRateLimit = components['headers']['RateLimit'];
export type $defs = Record<string, never>;
export interface operations {
    listAudit: {
        parameters: {
            query?: {
                /**
                 * @description Only what was done with the key with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                key?: string;
                /**
                 * @description Only this operation, by its name in this contract.
                 * @example recordCatchTest
                 */
                action?: string;
                /**
                 * @description What was done at or after this instant, RFC 3339.
                 * @example 2026-04-01T00:00:00Z
                 */
                from?: string;
                /**
                 * @description What was done before this instant, RFC 3339.
                 * @example 2026-05-01T00:00:00Z
                 */
                until?: string;
                /** @description newest-first (the default) or oldest-first. */
                order?: "newest-first" | "oldest-first";
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuditItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["AuditItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listRefusals: {
        parameters: {
            query?: {
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RefusalItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["RefusalItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listRefusalsWithoutKey: {
        parameters: {
            query?: {
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RefusalItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["RefusalItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateBulkDensity: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description What the density is known from. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["BulkDensityRequest"];
            };
        };
        responses: {
            /** @description The density, its interval and its reference. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BulkDensityAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateBulkDensityBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. What the density is known from. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["BulkDensityRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["BulkDensityAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    planCatch: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The meters and what is at hand: scale, container, time. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["CatchPlanRequest"];
            };
        };
        responses: {
            /** @description The plan. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CatchPlanAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    planCatchBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The meters and what is at hand: scale, container, time. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["CatchPlanRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["CatchPlanAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateCatchTest: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The catches and what is known about scale, counter and product. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["CatchTestRequest"];
            };
        };
        responses: {
            /** @description The evaluation. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CatchTestAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateCatchTestBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The catches and what is known about scale, counter and product. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["CatchTestRequest"];
                "text/csv": string;
                "text/tab-separated-values": string;
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["CatchTestAnswerBatchLine"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            413: components["responses"]["PayloadTooLarge"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listCatchTests: {
        parameters: {
            query?: {
                /**
                 * @description Only the machine with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                machine?: components["parameters"]["Machine"];
                /**
                 * @description Only this position of a meter.
                 * @example rear
                 */
                meter?: components["parameters"]["Meter"];
                /**
                 * @description Only this metering element.
                 * @example standard roller
                 */
                element?: components["parameters"]["Element"];
                /**
                 * @description Only the product with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                product?: components["parameters"]["Product"];
                /**
                 * @description Only the lot with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                lot?: components["parameters"]["Lot"];
                /**
                 * @description Only the scale with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                scale?: components["parameters"]["Scale"];
                /**
                 * @description Only the plan with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                plan?: components["parameters"]["Plan"];
                /** @description Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks. */
                verdict?: "investigate" | "repeat" | "keep" | "adopt";
                /**
                 * @description What happened at or after this instant, RFC 3339.
                 * @example 2026-04-01T00:00:00Z
                 */
                from?: components["parameters"]["From"];
                /**
                 * @description What happened before this instant, RFC 3339.
                 * @example 2026-05-01T00:00:00Z
                 */
                until?: components["parameters"]["Until"];
                /** @description newest-first (the default) or oldest-first, by the time when it happened. */
                order?: components["parameters"]["Order"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HistoryItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["HistoryItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    recordCatchTest: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description The catches, and which machine, meter, element, product and scale they belong to. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordCatchTestRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CatchTestRecordAnswer"];
                };
            };
            /** @description The stored test. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CatchTestRecordAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getCatchTest: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the test.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The test. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CatchTestRecordAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    recomputeCatchTest: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /**
                 * @description Id of the test.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Equal, or what differs. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecomputationAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listChanges: {
        parameters: {
            query?: {
                /**
                 * @description What was stored after this cursor: the after of a page, or the cursor of a change. It stays good for ever. From the first change without it.
                 * @example eyJ2IjoxfQ
                 */
                after?: string;
                /**
                 * @description While there is nothing to list, wait this long for something to be stored: 0s (the default) to 30s. The answer can come earlier, also without a change.
                 * @example 20s
                 */
                wait?: string;
                /** @description Only records of this kind. */
                kind?: "machine" | "product" | "lot" | "scale" | "container" | "plan" | "catch-test" | "adoption" | "scale-check";
                /**
                 * @description Only what is about the machine with this id, or was until the change.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                machine?: string;
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChangePage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["ChangeItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            410: components["responses"]["Gone"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listCodes: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every code. */
            200: {
                headers: {
                    /**
                     * @description The list may be kept for an hour; it changes only with a new version of the service.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CodesAnswer"];
                };
            };
            /** @description The query holds a parameter that is unknown or given twice. */
            400: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listContainers: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["ContainerAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createContainer: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description A container for catches. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ContainerRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerAnswer"];
                };
            };
            /** @description The stored record. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getContainer: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The record. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replaceContainer: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        /** @description A container for catches. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ContainerRequest"];
            };
        };
        responses: {
            /** @description The record as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateDistanceSensor: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The runs, and what the controller holds. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["DistanceSensorRequest"];
            };
        };
        responses: {
            /** @description The evaluation. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DistanceSensorAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateDistanceSensorBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The runs, and what the controller holds. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["DistanceSensorRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["DistanceSensorAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateDriveWheelTurns: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The wheel, the width, and what is known beside them. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["DriveWheelTurnsRequest"];
            };
        };
        responses: {
            /** @description Turns, catches, and the rate of the tests. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DriveWheelTurnsAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateDriveWheelTurnsBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The wheel, the width, and what is known beside them. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["DriveWheelTurnsRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["DriveWheelTurnsAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateElementFit: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The density, what is to be put down at which speeds, and the elements at hand. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ElementFitRequest"];
            };
        };
        responses: {
            /** @description The displacements, and the elements beside them. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ElementFitAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateElementFitBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The density, what is to be put down at which speeds, and the elements at hand. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["ElementFitRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["ElementFitAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listHistory: {
        parameters: {
            query?: {
                /**
                 * @description Only the machine with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                machine?: components["parameters"]["Machine"];
                /**
                 * @description Only this position of a meter.
                 * @example rear
                 */
                meter?: components["parameters"]["Meter"];
                /**
                 * @description Only this metering element.
                 * @example standard roller
                 */
                element?: components["parameters"]["Element"];
                /**
                 * @description Only the product with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                product?: components["parameters"]["Product"];
                /**
                 * @description Only the lot with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                lot?: components["parameters"]["Lot"];
                /**
                 * @description Only the scale with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                scale?: components["parameters"]["Scale"];
                /**
                 * @description Only the plan with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                plan?: components["parameters"]["Plan"];
                /** @description Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks. */
                verdict?: "investigate" | "repeat" | "keep" | "adopt" | "passed" | "failed";
                /**
                 * @description What happened at or after this instant, RFC 3339.
                 * @example 2026-04-01T00:00:00Z
                 */
                from?: components["parameters"]["From"];
                /**
                 * @description What happened before this instant, RFC 3339.
                 * @example 2026-05-01T00:00:00Z
                 */
                until?: components["parameters"]["Until"];
                /** @description newest-first (the default) or oldest-first, by the time when it happened. */
                order?: components["parameters"]["Order"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HistoryItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["HistoryItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listKeys: {
        parameters: {
            query?: {
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["KeyAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createKey: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description Whose key, and what it may do. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["KeyRequest"];
            };
        };
        responses: {
            /** @description The key that this id already had, from an equal request; without its text. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyAnswer"];
                };
            };
            /** @description The new key. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewKeyAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getKey: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the key.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The key. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    rotateKey: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                /**
                 * @description Id of the old key.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        /** @description How long the old key goes on. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["RotationRequest"];
            };
        };
        responses: {
            /** @description The key that this id already had, from an equal request; without its text. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyAnswer"];
                };
            };
            /** @description The new key. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewKeyAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    revokeKey: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                /**
                 * @description Id of the key.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        /** @description Why. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["RevocationRequest"];
            };
        };
        responses: {
            /** @description The key as it is now. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listLots: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["LotAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createLot: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description A lot of a product: a delivery, a seed lot, a treatment of its own. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["LotRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotAnswer"];
                };
            };
            /** @description The stored record. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getLot: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The record. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replaceLot: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        /** @description A lot of a product: a delivery, a seed lot, a treatment of its own. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["LotRequest"];
            };
        };
        responses: {
            /** @description The record as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listMachines: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["MachineAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createMachine: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description A seeding machine with its tanks, meters and what a test disturbs on it. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["MachineRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineAnswer"];
                };
            };
            /** @description The stored record. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getMachine: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The record. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replaceMachine: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        /** @description A seeding machine with its tanks, meters and what a test disturbs on it. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["MachineRequest"];
            };
        };
        responses: {
            /** @description The record as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateMeterSpeed: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Rates, ground speeds and the elements that the machine has. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["MeterSpeedRequest"];
            };
        };
        responses: {
            /** @description Speeds, windows and ranking. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeterSpeedAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateMeterSpeedBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. Rates, ground speeds and the elements that the machine has. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["MeterSpeedRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["MeterSpeedAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateNewLot: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The value in force and the two lots. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewLotRequest"];
            };
        };
        responses: {
            /** @description Verdict, predicted mass per revolution, rate and effects. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewLotAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateNewLotBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The value in force and the two lots. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["NewLotRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["NewLotAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    planCatchOfPlan: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the plan. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path: {
                /**
                 * @description Id of the plan.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The catch plan. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CatchPlanAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `settings-at-odds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    setUpOfPlan: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the plan and its records. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path: {
                /**
                 * @description Id of the plan.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Rates and set-up, and what is still missing. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanSetUpAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listPlans: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["PlanAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createPlan: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description A plan for a field: which meter puts down which product at which rate, and the catch test that goes before. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanAnswer"];
                };
            };
            /** @description The stored record. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getPlan: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The record. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replacePlan: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        /** @description A plan for a field: which meter puts down which product at which rate, and the catch test that goes before. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanRequest"];
            };
        };
        responses: {
            /** @description The record as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateProductRate: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The nutrients wanted, the products at hand, credits. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ProductRateRequest"];
            };
        };
        responses: {
            /** @description Rates, supply, surplus and cost. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductRateAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateProductRateBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The nutrients wanted, the products at hand, credits. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["ProductRateRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["ProductRateAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listProducts: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["ProductAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createProduct: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description A product that meters put down. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ProductRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductAnswer"];
                };
            };
            /** @description The stored record. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getProduct: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The record. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replaceProduct: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        /** @description A product that meters put down. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ProductRequest"];
            };
        };
        responses: {
            /** @description The record as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listScaleChecks: {
        parameters: {
            query?: {
                /**
                 * @description Only the scale with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                scale?: components["parameters"]["Scale"];
                /** @description Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks. */
                verdict?: "passed" | "failed";
                /**
                 * @description What happened at or after this instant, RFC 3339.
                 * @example 2026-04-01T00:00:00Z
                 */
                from?: components["parameters"]["From"];
                /**
                 * @description What happened before this instant, RFC 3339.
                 * @example 2026-05-01T00:00:00Z
                 */
                until?: components["parameters"]["Until"];
                /** @description newest-first (the default) or oldest-first, by the time when it happened. */
                order?: components["parameters"]["Order"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HistoryItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["HistoryItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    recordScaleCheck: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description The readings of known masses. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScaleCheckRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleCheckAnswer"];
                };
            };
            /** @description The stored check. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleCheckAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getScaleCheck: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the check.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The check. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleCheckAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listScales: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["ScaleAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createScale: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description A scale. Its span error comes from its checks, which are evidence of their own. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScaleRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleAnswer"];
                };
            };
            /** @description The stored record. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getScale: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The record. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replaceScale: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the record.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: components["parameters"]["Id"];
            };
            cookie?: never;
        };
        /** @description A scale. Its span error comes from its checks, which are evidence of their own. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScaleRequest"];
            };
        };
        responses: {
            /** @description The record as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScaleAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateSeedRowLimit: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. Printed numbers keep the unit of their source. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Crop, soil, opener and what is placed with the seed. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SeedRowLimitRequest"];
            };
        };
        responses: {
            /** @description Loads, limits and their verdicts. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeedRowLimitAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateSeedRowLimitBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. Crop, soil, opener and what is placed with the seed. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["SeedRowLimitRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["SeedRowLimitAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateSeedingRate: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description What is fixed, and what is known of the seed. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SeedingRateRequest"];
            };
        };
        responses: {
            /** @description Rate, seeds, plants, packages and cost. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeedingRateAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateSeedingRateBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. What is fixed, and what is known of the seed. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["SeedingRateRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["SeedingRateAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateStandCount: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The counts, their ground, and what is known about what was sown. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["StandCountRequest"];
            };
        };
        responses: {
            /** @description Stand, survival and emergence. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandCountAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateStandCountBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The counts, their ground, and what is known about what was sown. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["StandCountRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["StandCountAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateStandRisk: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The minimum stand, the share of seeds that come up, and how much it differs. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["StandRiskRequest"];
            };
        };
        responses: {
            /** @description Rates, probabilities and the cost of the margin. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandRiskAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateStandRiskBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The minimum stand, the share of seeds that come up, and how much it differs. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["StandRiskRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["StandRiskAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listUnits: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every unit. */
            200: {
                headers: {
                    /**
                     * @description The list may be kept for an hour; it changes only with a new version of the service.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitsAnswer"];
                };
            };
            /** @description The query holds a parameter that is unknown or given twice. */
            400: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listAdoptions: {
        parameters: {
            query?: {
                /**
                 * @description Only the machine with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                machine?: components["parameters"]["Machine"];
                /**
                 * @description Only this position of a meter.
                 * @example rear
                 */
                meter?: components["parameters"]["Meter"];
                /**
                 * @description Only this metering element.
                 * @example standard roller
                 */
                element?: components["parameters"]["Element"];
                /**
                 * @description Only the product with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                product?: components["parameters"]["Product"];
                /**
                 * @description Only the lot with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                lot?: components["parameters"]["Lot"];
                /**
                 * @description What happened at or after this instant, RFC 3339.
                 * @example 2026-04-01T00:00:00Z
                 */
                from?: components["parameters"]["From"];
                /**
                 * @description What happened before this instant, RFC 3339.
                 * @example 2026-05-01T00:00:00Z
                 */
                until?: components["parameters"]["Until"];
                /** @description newest-first (the default) or oldest-first, by the time when it happened. */
                order?: components["parameters"]["Order"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HistoryItemPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["HistoryItem"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    adoptValue: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description The number typed in, where, by whom and why. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["AdoptionRequest"];
            };
        };
        responses: {
            /** @description The record that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AdoptionAnswer"];
                };
            };
            /** @description The stored adoption. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AdoptionAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            /** @description The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do. What breaks no rule can still be refused: `typed-decimal-slip`, `typed-twice-or-half`, `typed-in-other-unit`, `typed-off-test`, `typed-off-value-in-force`, `typed-off-last-test`, `typed-more-than-element-holds`. */
            422: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getAdoption: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
            };
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the adoption.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The adoption. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AdoptionAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listValuesInForce: {
        parameters: {
            query?: {
                /**
                 * @description Only this position.
                 * @example rear
                 */
                meter?: string;
                /**
                 * @description Only this metering element.
                 * @example standard roller
                 */
                element?: components["parameters"]["Element"];
                /**
                 * @description Only this setting.
                 * @example gear 2
                 */
                setting?: string;
                /**
                 * @description Only the product with this id.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                product?: components["parameters"]["Product"];
                /**
                 * @description In force at this instant, RFC 3339; default now.
                 * @example 2026-04-18T06:40:00Z
                 */
                at?: string;
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path: {
                /**
                 * @description Id of the machine.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The values in force. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ValueInForceAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["ValueInForceAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateVolumeCheck: {
        parameters: {
            query?: {
                /** @description Units of the answer; as-asked takes those of the question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The element, the density, and a value to check. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["VolumeCheckRequest"];
            };
        };
        responses: {
            /** @description The expected value and the comparison. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VolumeCheckAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    evaluateVolumeCheckBatch: {
        parameters: {
            query?: {
                /** @description Units of all answers; as-asked takes for each those of its question. */
                units?: "as-asked" | "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Questions, one a line. The element, the density, and a value to check. */
        requestBody: {
            content: {
                "application/x-ndjson": components["schemas"]["VolumeCheckRequest"];
            };
        };
        responses: {
            /** @description An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": components["schemas"]["VolumeCheckAnswerBatchLine"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            /** @description The body is of none of the media types listed in Accept-Post, or not in UTF-8. */
            415: {
                headers: {
                    /**
                     * @description The media types that can be sent.
                     * @example application/x-ndjson, text/csv
                     */
                    "Accept-Post": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    /**
                     * @description With a compressed body: that bodies are taken only as they are.
                     * @example identity
                     */
                    "Accept-Encoding"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createKeyOfWorkspace: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                /**
                 * @description Id of the workspace.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        /** @description Whose key, and what it may do. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["KeyRequest"];
            };
        };
        responses: {
            /** @description The key that this id already had, from an equal request; without its text. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyAnswer"];
                };
            };
            /** @description The new key. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewKeyAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    listWorkspaces: {
        parameters: {
            query?: {
                /** @description Retired ones too: true or false. Default false. */
                includeRetired?: boolean;
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
                /** @description What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas. */
                separator?: components["parameters"]["Separator"];
                /** @description Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default). */
                bom?: components["parameters"]["Bom"];
                /**
                 * @description Where to go on: the cursor of the previous page's next link.
                 * @example eyJ2IjoxfQ
                 */
                cursor?: components["parameters"]["Cursor"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list. */
            200: {
                headers: {
                    /**
                     * @description Address of the next page (RFC 8288, rel next); absent on the last one.
                     * @example <http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel="next"
                     */
                    Link?: string;
                    /**
                     * @description A name for the file, with CSV.
                     * @example attachment; filename=history.csv
                     */
                    "Content-Disposition"?: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkspaceAnswerPage"];
                    "text/csv": string;
                    "application/x-ndjson": components["schemas"]["WorkspaceAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            406: components["responses"]["NotAcceptable"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    createWorkspace: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.
                 * @example "8e03978e-40d5-43e8-bc93-6894a57f9324"
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        /** @description Its name. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["WorkspaceRequest"];
            };
        };
        responses: {
            /** @description The workspace that this id already had, from an equal request. */
            200: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkspaceAnswer"];
                };
            };
            /** @description The new workspace. */
            201: {
                headers: {
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    /**
                     * @description true when this is the answer to an earlier, equal request.
                     * @example true
                     */
                    "Idempotent-Replayed"?: string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkspaceAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            408: components["responses"]["RequestTimeout"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    getWorkspace: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description The ETag that you have; an unchanged record answers 304 without a body.
                 * @example "r3"
                 */
                "If-None-Match"?: components["parameters"]["IfNoneMatch"];
            };
            path: {
                /**
                 * @description Id of the workspace.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The workspace. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkspaceAnswer"];
                };
            };
            /** @description Not changed since the representation with the entity tag sent. */
            304: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["UnprocessableEntity"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
    replaceWorkspace: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The ETag of the revision that you are changing; without it the change is refused.
                 * @example "r3"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                /**
                 * @description Id of the workspace.
                 * @example 019a0000-0000-7000-8000-000000000000
                 */
                id: string;
            };
            cookie?: never;
        };
        /** @description Its name, and whether it is retired. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["WorkspaceRequest"];
            };
        };
        responses: {
            /** @description The workspace as it is now. */
            200: {
                headers: {
                    /**
                     * @description Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.
                     * @example "r3"
                     */
                    ETag: string;
                    /**
                     * @description Address of the record.
                     * @example /v1/machines/019a0000-0000-7000-8000-000000000000
                     */
                    Location: string;
                    /**
                     * @description A copy may be kept by its owner but has to be checked before each use.
                     * @example private, no-cache
                     */
                    "Cache-Control": string;
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkspaceAnswer"];
                };
            };
            400: components["responses"]["BadRequest"];
            401: components["responses"]["Unauthorized"];
            403: components["responses"]["Forbidden"];
            404: components["responses"]["NotFound"];
            408: components["responses"]["RequestTimeout"];
            412: components["responses"]["PreconditionFailed"];
            413: components["responses"]["PayloadTooLarge"];
            415: components["responses"]["UnsupportedMediaType"];
            422: components["responses"]["UnprocessableEntity"];
            428: components["responses"]["PreconditionRequired"];
            429: components["responses"]["TooManyRequests"];
            500: components["responses"]["InternalServerError"];
            503: components["responses"]["ServiceUnavailable"];
        };
    };
}
