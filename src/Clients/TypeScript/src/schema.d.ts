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
         * @description For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,
         *     container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, the
         *     steps with their dependencies, and the cautions. Nothing is stored.
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
         * @description From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has changed
         *     against the value in force, and what to do now. Nothing is stored; the same question always gets the same answer.
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
         *     it empty or repeat it. A column `note` is read over. Where the header has a semicolon, semicolons separate the cells and
         *     numbers may have decimal commas; otherwise commas separate them and numbers have decimal points. Errors name row and
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
         * @description Machine, product, lot, scale and plan come from their records, the repeatability, the day-to-day component, the error of
         *     the scale and the value in force from the history where it has them; the answer says what was used. The test is kept with
         *     its full question, so that it can be evaluated again at any time. A wrong test is superseded by another with a reason.
         *     Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
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
    "/v1/codes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Lists every code with its cause and what to do.
         * @description The stable codes of errors, refusals, findings, reasons and cautions, each with its cause, its remedy, and the statuses
         *     or severities that it comes with: for translations and for help inside a client. People read the same at
         *     `/reference/codes`. Within v1 codes are only added.
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
         * @description The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceContainer"];
        post?: never;
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
         * @description The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
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
         * @description The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
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
         * @description For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which each
         *     rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its limits.
         *     Elements come best first. Nothing is stored.
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
    "/v1/plans/{id}/catch-plan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Computes the catch plan of a stored plan.
         * @description Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, or from the plan's start value where none is. Computed anew with each call; nothing is stored.
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
         * @description The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
         */
        put: operations["replacePlan"];
        post?: never;
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
         * @description The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
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
         * @description The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit.
         *     After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id,
         *     to be able to repeat the request safely.
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
         * @description The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
         */
        put: operations["replaceScale"];
        post?: never;
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
         * @description The closed list of units that payloads take, by dimension, each with its exact factor to SI as a ratio of two whole
         *     numbers and its codes in UCUM, UN/ECE Recommendation 20 and AgGateway ADAPT where they have one.
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
         * @description From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. The
         *     number is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay on
         *     record. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
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
         * @description For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whom
         *     and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,
         *     but the number stays in force until another is adopted, because the controller uses it until then.
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
            /** @description The mass per revolution that the controller uses since then. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
            /** @description The request exactly as entered. */
            entered: components["schemas"]["AdoptionRequest"];
            /** @description What was noticed. */
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
            why: string;
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
            /** @description The member that overrides it. */
            name: string;
            /** @description The value, where it is a quantity. */
            value?: components["schemas"]["AnyQuantity"];
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
        /** @description One bound on a catch. */
        BoundAnswer: {
            /**
             * @description What bounds it. Known today: `container`, `scale-capacity`, `lift-limit`, `longest-run`, `shared-shaft`.
             * @example container
             * @example scale-capacity
             * @example lift-limit
             * @example longest-run
             * @example shared-shaft
             */
            bound: string;
            /** @description Largest net mass that it allows; for the container with its overflow margin. */
            mass: components["schemas"]["MassQuantity"];
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
        /** @description Area worked at one ground speed. */
        CapacityAnswer: {
            /** @description The ground speed. */
            groundSpeed: components["schemas"]["SpeedQuantity"];
            /** @description Area worked in one hour. */
            areaPerHour: components["schemas"]["AreaQuantity"];
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
            /** @description The meters in the order given. */
            meters: components["schemas"]["MeterPlanAnswer"][];
            /** @description When to stop which meter, first stop first; stops closer than ten seconds share a group. */
            stopOrder: components["schemas"]["StopAnswer"][];
            /** @description What to do, as a set: a step may begin when every step it comes after is done. */
            steps: components["schemas"]["StepAnswer"][];
            /** @description What can hurt somebody; show them with the steps. */
            cautions: components["schemas"]["CautionAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. */
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
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["CatchPlanAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description A catch test to be planned: one or several meters in one run. */
        CatchPlanRequest: {
            /** @description Ground speed that the controller is made to believe in during the run; usually the planned one. Range: above 0 and up to 100 km/h. */
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
            /**
             * Format: double
             * @description Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
             */
            coverageProbability?: number;
            /** @description Longest run of one catch. Default 300 s: default; judgement, no published source. Range: above 0 and up to 24 h. */
            longestRun?: components["schemas"]["TimeQuantity"];
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
            disturbedPoints?: components["schemas"]["DisturbedPointOfPlan"][];
        };
        /** @description The evaluation of a catch test. */
        CatchTestAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
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
             * @description How many more catches a repeat takes; absent for other verdicts and when no number of catches would help.
             */
            moreCatches?: number;
            /** @description Why. */
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
            /** @description Mistakes that would explain the test, the most probable first; those under a probability of 10 % are left out. Empty when none stands out. */
            likelyMistakes: components["schemas"]["LikelyMistakeAnswer"][];
            /** @description What to type in; given with the verdict adopt when the controller's form is known. */
            enter?: components["schemas"]["EntryAnswer"];
            /** @description What happens if the value in force stays although the meter delivers something else. */
            effectIfValueInForceStays?: components["schemas"]["EffectAnswer"];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed beyond the verdict. */
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
            /** @description What was noticed about the records the test refers to. */
            findings: components["schemas"]["FindingAnswer"][];
            /** @description What came to light after the test; absent when nothing did. */
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
            ruledOutMistakes?: ("pounds-as-kilograms" | "kilograms-as-pounds" | "tare-not-taken-off" | "tare-taken-off-twice" | "tare-of-another-container" | "decimal-slip" | "count-doubled" | "count-halved" | "meter-not-primed" | "container-overflowed" | "tank-bridged-or-empty" | "meter-isolated" | "catch-point-missed" | "another-element" | "another-product" | "value-in-force-wrong" | "start-value-wrong" | "something-else")[];
            /** @description Repeatability of one catch (standard deviation), scale and counter parts removed. Default 1 % for a catch of at least 5 kg and 20 rev, 2 % below, 3 % for dusty or caking products or under 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
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
            /** @description Change from which a second catch has to confirm. Default 10 %: common practice: 10 to 15 %; no published source. Range: 0.1 to 100 %. */
            secondCatchChange?: components["schemas"]["RatioQuantity"];
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
            /**
             * @description Stable code. Known today: `manual-first`, `unexpected-start`, `rotating-parts`, `stored-pressure`, `product-dust`, `tank-entry`, `heavy-container`.
             * @example manual-first
             * @example unexpected-start
             * @example rotating-parts
             * @example stored-pressure
             * @example product-dust
             * @example tank-entry
             * @example heavy-container
             */
            code: string;
            /** @description A sentence that should be shown as it is. */
            detail: string;
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
             * @description The form: mass-per-revolution, mass-per-ten-revolutions, mass-per-pulse, volume-per-revolution or mass-per-time.
             * @enum {string}
             */
            form: "mass-per-revolution" | "mass-per-ten-revolutions" | "mass-per-pulse" | "volume-per-revolution" | "mass-per-time";
            /**
             * @description Unit of the number: one of mass per revolution; of mass for ten revolutions or a pulse; of volume; or of mass per time, as the form asks.
             * @enum {string}
             */
            unit: "kg/rev" | "g/rev" | "lb/rev" | "oz/rev" | "kg" | "g" | "t" | "lb" | "oz" | "ton-us" | "ton-uk" | "L" | "m3" | "bu-us" | "bu-imp" | "ft3" | "kg/min" | "g/s" | "lb/min";
            /**
             * Format: int32
             * @description Decimals that the controller takes.
             */
            decimals: number;
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
        /** @description A mass per revolution at one meter speed. */
        DeliveryPoint: {
            /** @description The meter speed. Range: above 0 and up to 10000 rpm. */
            meterSpeed: components["schemas"]["RotationQuantity"];
            /** @description The mass per revolution there. Range: above 0 and up to 1000 kg/rev. */
            massPerRevolution: components["schemas"]["MassPerRevolutionQuantity"];
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
        /** @description Something that the test disturbs, in the owner's words. */
        DisturbedPointOfPlan: {
            /** @description What it is, for example the fan drive. */
            name: string;
            /** @description What is done to it before the catch. */
            toOpen?: string;
            /** @description How it is put back. */
            toRestore?: string;
        };
        /** @description The effect of a wrong value. */
        EffectAnswer: {
            /** @description The rate that is really applied. */
            appliedRate: components["schemas"]["MassPerAreaQuantity"];
            /** @description Product too much over the stated area; negative when too little. */
            massOverArea?: components["schemas"]["MassQuantity"];
            /** @description Money for that product; negative when the crop gets too little. */
            cost?: components["schemas"]["Money"];
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
        /** @description A metering element: a roller, an auger. */
        ElementOfMachine: {
            /** @description What the owner calls it. */
            name: string;
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
             * Format: int32
             * @description Pockets or flutes that discharge one after the other in one revolution; gives the spacing of discharges on the ground. No default.
             */
            pocketsPerRevolution?: number;
        };
        /** @description A number for the controller. */
        EntryAnswer: {
            /**
             * @description The form in which the controller takes it. Known today: `mass-per-revolution`, `mass-per-ten-revolutions`, `mass-per-pulse`, `volume-per-revolution`, `mass-per-time`.
             * @example mass-per-revolution
             * @example mass-per-ten-revolutions
             * @example mass-per-pulse
             * @example volume-per-revolution
             * @example mass-per-time
             */
            form: string;
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
        /** @description Why a catch is left out. */
        Exclusion: {
            /** @description The reason, in the sender's words. */
            reason: string;
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
        /** @description Something the engine noticed. */
        FindingAnswer: {
            /**
             * @description Stable code. Known today: `change-detected`, `no-practical-change`, `within-tolerance`, `within-tolerance-not-shown`, `no-value-in-force`, `large-change`, `precision-not-reached`, `precision-out-of-reach`, `catches-scatter-more-than-expected`, `likely-mistake`, `cannot-be-told-apart`, `stray-catch`, `first-catch-low`, `trend-over-catches`, `additive-offset`, `small-catch`, `coarse-scale`, `load-beyond-class`, `scale-dominates`, `default-repeatability-used`, `catch-excluded`, `mixed-mass-units`, `entry-resolution-matters`, `outside-meter-window`, `near-meter-limit`, `container-nearly-full`, `bounds-cross`, `wide-speed-range`, `outside-measured-speeds`, `stops-close-together`, `conditions-differ`, `varies-from-day-to-day`, `scale-check-overdue`, `scale-check-failed`, `scale-check-failed-later`, `scale-check-changed`, `value-in-force-changed`, `basis-superseded`, `other-lot`, `adopted-otherwise`.
             * @example change-detected
             * @example no-practical-change
             * @example within-tolerance
             * @example within-tolerance-not-shown
             * @example no-value-in-force
             * @example large-change
             * @example precision-not-reached
             * @example precision-out-of-reach
             * @example catches-scatter-more-than-expected
             * @example likely-mistake
             * @example cannot-be-told-apart
             * @example stray-catch
             * @example first-catch-low
             * @example trend-over-catches
             * @example additive-offset
             * @example small-catch
             * @example coarse-scale
             * @example load-beyond-class
             * @example scale-dominates
             * @example default-repeatability-used
             * @example catch-excluded
             * @example mixed-mass-units
             * @example entry-resolution-matters
             * @example outside-meter-window
             * @example near-meter-limit
             * @example container-nearly-full
             * @example bounds-cross
             * @example wide-speed-range
             * @example outside-measured-speeds
             * @example stops-close-together
             * @example conditions-differ
             * @example varies-from-day-to-day
             * @example scale-check-overdue
             * @example scale-check-failed
             * @example scale-check-failed-later
             * @example scale-check-changed
             * @example value-in-force-changed
             * @example basis-superseded
             * @example other-lot
             * @example adopted-otherwise
             */
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
            /** @description The meter it is about, where the question held several. */
            meter?: string;
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
             * @description From when on it opens nothing, RFC 3339. Default never.
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
            /**
             * @description Stable code; a code that has been checked can be sent back in ruledOutMistakes. Known today: `pounds-as-kilograms`, `kilograms-as-pounds`, `tare-not-taken-off`, `tare-taken-off-twice`, `tare-of-another-container`, `decimal-slip`, `count-doubled`, `count-halved`, `meter-not-primed`, `container-overflowed`, `tank-bridged-or-empty`, `meter-isolated`, `another-element`, `another-product`, `catch-point-missed`, `value-in-force-wrong`, `start-value-wrong`, `something-else`.
             * @example pounds-as-kilograms
             * @example kilograms-as-pounds
             * @example tare-not-taken-off
             * @example tare-taken-off-twice
             * @example tare-of-another-container
             * @example decimal-slip
             * @example count-doubled
             * @example count-halved
             * @example meter-not-primed
             * @example container-overflowed
             * @example tank-bridged-or-empty
             * @example meter-isolated
             * @example another-element
             * @example another-product
             * @example catch-point-missed
             * @example value-in-force-wrong
             * @example start-value-wrong
             * @example something-else
             */
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
            /** @description The one thing to look at. */
            check: string;
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
            /** @description How its meters are driven: `separate` drives (the default) or a `shared-shaft`. */
            drive?: string;
            /** @description Its tanks. */
            tanks?: components["schemas"]["TankOfMachine"][];
            /** @description Its meters, each under one position. */
            meters: components["schemas"]["MeterOfMachine"][];
            /** @description What a test disturbs on this machine and has to be put back, in the owner's words. */
            restorePoints?: components["schemas"]["DisturbedPointOfPlan"][];
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
            restorePoints?: components["schemas"]["DisturbedPointOfPlan"][];
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
            /** @description Target rate; for a variable rate, the one to be tested at. Range: above 0 and up to 100000 kg/ha. */
            targetRate: components["schemas"]["MassPerAreaQuantity"];
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
            /** @description Metering elements it can be fitted with; names are unique within the meter. */
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
            /** @description The mass per revolution that the controller uses now. Default of its `relativeUncertainty` 2 %: default for a value in force; judgement, no published source. Range: above 0 and up to 1000 kg/rev. */
            valueInForce?: components["schemas"]["ReferenceOfTest"];
            /** @description A predicted mass per revolution where none is in force yet. Default of its `relativeUncertainty` 10 %: a predicted start value may be 20 % off; judgement, no published source. Range: above 0 and up to 1000 kg/rev. */
            startValue?: components["schemas"]["ReferenceOfTest"];
            /** @description Limits of the meter speed. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /** @description Its own container. */
            container?: components["schemas"]["ContainerOfPlan"];
            /** @description Repeatability of one catch (standard deviation). Default 1 % for a catch of at least 5 kg and 20 rev, 2 % below, 3 % for dusty or caking products or under 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %. */
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
            /** @description The bound that acts. */
            limitedBy: components["schemas"]["BoundAnswer"];
            /** @description Every bound, acting or not. */
            bounds: components["schemas"]["BoundAnswer"][];
        };
        /** @description Meter speeds, windows and the order of the elements. */
        MeterSpeedAnswer: {
            /** @description The outcome in one or two sentences that can be shown as they are. */
            headline: string;
            /** @description The elements, best first. */
            elements: components["schemas"]["ElementAnswer"][];
            /** @description Area worked in one hour at each ground speed. */
            capacity: components["schemas"]["CapacityAnswer"][];
            /** @description Values used that the question did not state. */
            assumptions: components["schemas"]["AssumptionAnswer"][];
            /** @description What was noticed. */
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
            /** @description What the question would be answered alone; absent when there is a problem. */
            result?: components["schemas"]["MeterSpeedAnswer"];
            /** @description What the question would be refused with alone; absent when there is a result. */
            problem?: components["schemas"]["Problem"];
        };
        /** @description What is asked of a meter, and the metering elements it can be fitted with. */
        MeterSpeedRequest: {
            /** @description Width that the meter covers. Range: above 0 and up to 200 m. */
            coveredWidth: components["schemas"]["LengthQuantity"];
            /** @description Rates to be put down: one, or those of all zones of a variable-rate field. Zero means off and is allowed beside others. Range: 0 to 100000 kg/ha. */
            rates: components["schemas"]["MassPerAreaQuantity"][];
            /** @description Ground speeds: one, or the slowest and the fastest of the field. Range: above 0 and up to 100 km/h. */
            groundSpeeds: components["schemas"]["SpeedQuantity"][];
            /** @description The metering elements that the machine has for this meter. */
            elements: components["schemas"]["ElementOfMeter"][];
            /** @description Limits of the meter speed for elements that do not name their own. */
            speedLimits?: components["schemas"]["RotationLimits"];
            /** @description Width that the machine works, for the area per hour. Default the covered width: judgement, no overlap between passes. Range: above 0 and up to 200 m. */
            workingWidth?: components["schemas"]["LengthQuantity"];
            /** @description Share of the time spent working at that width and speed. Default 70 %: from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %. Range: 1 to 100 %. */
            fieldEfficiency?: components["schemas"]["RatioQuantity"];
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
            longestRun?: components["schemas"]["TimeQuantity"];
            /** @description Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first. */
            liftLimit?: components["schemas"]["MassQuantity"];
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
            longestRun?: components["schemas"]["TimeQuantity"];
            /** @description Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first. Range: above 0 and up to 1000 t. */
            liftLimit?: components["schemas"]["MassQuantity"];
            /** @description Conditions expected while seeding; tests under others get a finding. */
            sowingConditions?: components["schemas"]["Conditions"];
            /** @description What each meter puts down. */
            meters: components["schemas"]["MeterOfFieldPlan"][];
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
             * @description Stable code. Known today: `json-broken`, `type-wrong`, `member-unknown`, `member-duplicate`, `member-missing`, `unit-missing`, `unit-unknown`, `unit-wrong-dimension`, `unit-ambiguous`, `number-out-of-range`, `number-ambiguous`, `rows-apart`, `text-too-long`, `text-wrong`, `word-unknown`, `too-few`, `too-many`, `net-negative`, `tare-above-gross`, `revolutions-not-positive`, `catches-all-excluded`, `density-missing`, `settings-at-odds`, `not-found`, `method-not-allowed`, `not-acceptable`, `media-type-unsupported`, `body-too-large`, `body-too-slow`, `encoding-unsupported`, `rate-exceeded`, `service-busy`, `request-broken`, `line-too-long`, `element-not-in-meter`, `meter-not-on-machine`, `id-unknown`, `id-taken`, `cursor-invalid`, `time-wrong`, `record-retired`, `records-at-odds`, `value-missing`, `already-superseded`, `precondition-required`, `precondition-failed`, `idempotency-key-reused`, `idempotency-in-flight`, `key-missing`, `key-invalid`, `key-expired`, `key-revoked`, `workspace-retired`, `scope-missing`, `credentials-broken`, `storage-unavailable`, `internal-error`.
             * @example json-broken
             * @example type-wrong
             * @example member-unknown
             * @example member-duplicate
             * @example member-missing
             * @example unit-missing
             * @example unit-unknown
             * @example unit-wrong-dimension
             * @example unit-ambiguous
             * @example number-out-of-range
             * @example number-ambiguous
             * @example rows-apart
             * @example text-too-long
             * @example text-wrong
             * @example word-unknown
             * @example too-few
             * @example too-many
             * @example net-negative
             * @example tare-above-gross
             * @example revolutions-not-positive
             * @example catches-all-excluded
             * @example density-missing
             * @example settings-at-odds
             * @example not-found
             * @example method-not-allowed
             * @example not-acceptable
             * @example media-type-unsupported
             * @example body-too-large
             * @example body-too-slow
             * @example encoding-unsupported
             * @example rate-exceeded
             * @example service-busy
             * @example request-broken
             * @example line-too-long
             * @example element-not-in-meter
             * @example meter-not-on-machine
             * @example id-unknown
             * @example id-taken
             * @example cursor-invalid
             * @example time-wrong
             * @example record-retired
             * @example records-at-odds
             * @example value-missing
             * @example already-superseded
             * @example precondition-required
             * @example precondition-failed
             * @example idempotency-key-reused
             * @example idempotency-in-flight
             * @example key-missing
             * @example key-invalid
             * @example key-expired
             * @example key-revoked
             * @example workspace-retired
             * @example scope-missing
             * @example credentials-broken
             * @example storage-unavailable
             * @example internal-error
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
        /** @description The product of a catch test. */
        ProductOfTest: {
            /** @description What the owner calls it. */
            name?: string;
            /**
             * @description How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking).
             * @enum {string}
             */
            material?: "free-flowing" | "small-seed" | "dusty";
            /** @description Bulk density; needed when the controller takes a volume per revolution. No default. Range: 10 to 10000 kg/m3. */
            bulkDensity?: components["schemas"]["BulkDensityQuantity"];
            /** @description Price; gives the cost of a wrong value. */
            price?: components["schemas"]["Price"];
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
            /** @description Price. */
            price?: components["schemas"]["Price"];
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
            /**
             * @description Stable code. Known today: `change-detected`, `no-practical-change`, `within-tolerance`, `within-tolerance-not-shown`, `no-value-in-force`, `large-change`, `precision-not-reached`, `precision-out-of-reach`, `catches-scatter-more-than-expected`, `likely-mistake`, `cannot-be-told-apart`, `stray-catch`, `first-catch-low`, `trend-over-catches`, `additive-offset`, `small-catch`, `coarse-scale`, `load-beyond-class`, `scale-dominates`, `default-repeatability-used`, `catch-excluded`, `mixed-mass-units`, `entry-resolution-matters`, `outside-meter-window`, `near-meter-limit`, `container-nearly-full`, `bounds-cross`, `wide-speed-range`, `outside-measured-speeds`, `stops-close-together`, `conditions-differ`, `varies-from-day-to-day`, `scale-check-overdue`, `scale-check-failed`, `scale-check-failed-later`, `scale-check-changed`, `value-in-force-changed`, `basis-superseded`, `other-lot`, `adopted-otherwise`.
             * @example change-detected
             * @example no-practical-change
             * @example within-tolerance
             * @example within-tolerance-not-shown
             * @example no-value-in-force
             * @example large-change
             * @example precision-not-reached
             * @example precision-out-of-reach
             * @example catches-scatter-more-than-expected
             * @example likely-mistake
             * @example cannot-be-told-apart
             * @example stray-catch
             * @example first-catch-low
             * @example trend-over-catches
             * @example additive-offset
             * @example small-catch
             * @example coarse-scale
             * @example load-beyond-class
             * @example scale-dominates
             * @example default-repeatability-used
             * @example catch-excluded
             * @example mixed-mass-units
             * @example entry-resolution-matters
             * @example outside-meter-window
             * @example near-meter-limit
             * @example container-nearly-full
             * @example bounds-cross
             * @example wide-speed-range
             * @example outside-measured-speeds
             * @example stops-close-together
             * @example conditions-differ
             * @example varies-from-day-to-day
             * @example scale-check-overdue
             * @example scale-check-failed
             * @example scale-check-failed-later
             * @example scale-check-changed
             * @example value-in-force-changed
             * @example basis-superseded
             * @example other-lot
             * @example adopted-otherwise
             */
            code: string;
            /** @description A sentence that can be shown as it is. */
            detail: string;
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
             * @description Points or outlets whose product is meant to fall into the container; tells what one missed point would look like. No default.
             */
            catchPoints?: number;
            /** @description Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement. */
            ruledOutMistakes?: ("pounds-as-kilograms" | "kilograms-as-pounds" | "tare-not-taken-off" | "tare-taken-off-twice" | "tare-of-another-container" | "decimal-slip" | "count-doubled" | "count-halved" | "meter-not-primed" | "container-overflowed" | "tank-bridged-or-empty" | "meter-isolated" | "catch-point-missed" | "another-element" | "another-product" | "value-in-force-wrong" | "start-value-wrong" | "something-else")[];
            /** @description Repeatability of one catch (standard deviation), scale and counter parts removed. Default 1 % for a catch of at least 5 kg and 20 rev, 2 % below, 3 % for dusty or caking products or under 5 rev: judgement, 4 degrees of freedom, no published source. Default from the catches of earlier tests of this meter, element, setting and product, once there are enough; before that as said above. Range: 0.01 to 30 %. */
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
            /** @description Change from which a second catch has to confirm. Default 10 %: common practice: 10 to 15 %; no published source. Range: 0.1 to 100 %. */
            secondCatchChange?: components["schemas"]["RatioQuantity"];
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
            /** @description Its own standard uncertainty, relative, where known. Default in a catch test none: it is taken as exact. Default in a catch plan 2 % for a value in force and 10 % for a start value: judgement, no published source. Range: 0 to 100 %. */
            relativeUncertainty?: components["schemas"]["RatioQuantity"];
            /** @description True when another scale, or the same one after another check, stands behind it: then no scale error cancels in the change. Default false. */
            fromAnotherScale?: boolean;
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
             * @description From when on the new key opens nothing, RFC 3339. Default: it gets as long a life as the old one was given.
             */
            expiresAt?: string;
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
            /** @description Every reading is inside the limit of the scale. */
            passed: boolean;
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
        /** @description One step. */
        StepAnswer: {
            /** @description Identifier within the plan. */
            id: string;
            /** @description Steps that come before. */
            after: string[];
            /** @description What to do. */
            detail: string;
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
        /** @description A correction: which record was wrong, and why. */
        Supersedes: {
            /** @description Id of the record that was wrong. */
            record: string;
            /** @description What was wrong with it. */
            reason: string;
        };
        /** @description A tank. */
        TankOfMachine: {
            /** @description What the owner calls it. */
            name: string;
            /** @description Its volume. No default. Range: above 0 and up to 1000 m3. */
            volume?: components["schemas"]["VolumeQuantity"];
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
            why: string;
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
            /** @description What was noticed. */
            findings: components["schemas"]["FindingAnswer"][];
        };
        /** @description The values in force. */
        ValuesInForceAnswer: {
            /** @description One for each meter, element, setting and product that has one. */
            items: components["schemas"]["ValueInForceAnswer"][];
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
        /** @description The key has not the scope that this operation needs. */
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
         * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
         * @example 100
         */
        Limit: string;
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
        /** @description Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks. */
        Verdict: "investigate" | "repeat" | "keep" | "adopt" | "passed" | "failed";
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
export type AnyQuantity = components['schemas']['AnyQuantity'];
export type AreaQuantity = components['schemas']['AreaQuantity'];
export type AssumptionAnswer = components['schemas']['AssumptionAnswer'];
export type AuditItem = components['schemas']['AuditItem'];
export type AuditItemPage = components['schemas']['AuditItemPage'];
export type BoundAnswer = components['schemas']['BoundAnswer'];
export type BulkDensityQuantity = components['schemas']['BulkDensityQuantity'];
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
export type DeliveryPoint = components['schemas']['DeliveryPoint'];
export type DifferenceAnswer = components['schemas']['DifferenceAnswer'];
export type DisturbedPointOfPlan = components['schemas']['DisturbedPointOfPlan'];
export type EffectAnswer = components['schemas']['EffectAnswer'];
export type ElementAnswer = components['schemas']['ElementAnswer'];
export type ElementOfMachine = components['schemas']['ElementOfMachine'];
export type ElementOfMeter = components['schemas']['ElementOfMeter'];
export type EntryAnswer = components['schemas']['EntryAnswer'];
export type Exclusion = components['schemas']['Exclusion'];
export type FactorAnswer = components['schemas']['FactorAnswer'];
export type FindingAnswer = components['schemas']['FindingAnswer'];
export type HistoryItem = components['schemas']['HistoryItem'];
export type HistoryItemPage = components['schemas']['HistoryItemPage'];
export type HistoryValue = components['schemas']['HistoryValue'];
export type KeyAnswer = components['schemas']['KeyAnswer'];
export type KeyAnswerPage = components['schemas']['KeyAnswerPage'];
export type KeyRequest = components['schemas']['KeyRequest'];
export type KnownMassReadingOfCheck = components['schemas']['KnownMassReadingOfCheck'];
export type KnownScaleErrorOfTest = components['schemas']['KnownScaleErrorOfTest'];
export type LengthQuantity = components['schemas']['LengthQuantity'];
export type LikelyMistakeAnswer = components['schemas']['LikelyMistakeAnswer'];
export type LotAnswer = components['schemas']['LotAnswer'];
export type LotAnswerPage = components['schemas']['LotAnswerPage'];
export type LotRequest = components['schemas']['LotRequest'];
export type MachineAnswer = components['schemas']['MachineAnswer'];
export type MachineAnswerPage = components['schemas']['MachineAnswerPage'];
export type MachineRequest = components['schemas']['MachineRequest'];
export type MassPerAreaQuantity = components['schemas']['MassPerAreaQuantity'];
export type MassPerRevolutionQuantity = components['schemas']['MassPerRevolutionQuantity'];
export type MassPerThousandQuantity = components['schemas']['MassPerThousandQuantity'];
export type MassQuantity = components['schemas']['MassQuantity'];
export type MeasuredMassPerRevolution = components['schemas']['MeasuredMassPerRevolution'];
export type MeasuredRatio = components['schemas']['MeasuredRatio'];
export type MeterOfFieldPlan = components['schemas']['MeterOfFieldPlan'];
export type MeterOfMachine = components['schemas']['MeterOfMachine'];
export type MeterOfPlan = components['schemas']['MeterOfPlan'];
export type MeterPlanAnswer = components['schemas']['MeterPlanAnswer'];
export type MeterSpeedAnswer = components['schemas']['MeterSpeedAnswer'];
export type MeterSpeedAnswerBatchLine = components['schemas']['MeterSpeedAnswerBatchLine'];
export type MeterSpeedRequest = components['schemas']['MeterSpeedRequest'];
export type Money = components['schemas']['Money'];
export type NewKeyAnswer = components['schemas']['NewKeyAnswer'];
export type OtherContainerOfTest = components['schemas']['OtherContainerOfTest'];
export type OtherDeliveryOfTest = components['schemas']['OtherDeliveryOfTest'];
export type PlanAnswer = components['schemas']['PlanAnswer'];
export type PlanAnswerPage = components['schemas']['PlanAnswerPage'];
export type PlanRequest = components['schemas']['PlanRequest'];
export type PressureQuantity = components['schemas']['PressureQuantity'];
export type Price = components['schemas']['Price'];
export type Problem = components['schemas']['Problem'];
export type ProblemError = components['schemas']['ProblemError'];
export type ProductAnswer = components['schemas']['ProductAnswer'];
export type ProductAnswerPage = components['schemas']['ProductAnswerPage'];
export type ProductOfTest = components['schemas']['ProductOfTest'];
export type ProductRequest = components['schemas']['ProductRequest'];
export type PulsesPerRevolutionQuantity = components['schemas']['PulsesPerRevolutionQuantity'];
export type RateWindowAnswer = components['schemas']['RateWindowAnswer'];
export type RatioQuantity = components['schemas']['RatioQuantity'];
export type ReasonAnswer = components['schemas']['ReasonAnswer'];
export type RecomputationAnswer = components['schemas']['RecomputationAnswer'];
export type RecordCatchTestRequest = components['schemas']['RecordCatchTestRequest'];
export type ReferenceOfTest = components['schemas']['ReferenceOfTest'];
export type RefusalItem = components['schemas']['RefusalItem'];
export type RefusalItemPage = components['schemas']['RefusalItemPage'];
export type RevocationRequest = components['schemas']['RevocationRequest'];
export type RevolutionsQuantity = components['schemas']['RevolutionsQuantity'];
export type RotationLimits = components['schemas']['RotationLimits'];
export type RotationQuantity = components['schemas']['RotationQuantity'];
export type RotationRequest = components['schemas']['RotationRequest'];
export type ScaleAnswer = components['schemas']['ScaleAnswer'];
export type ScaleAnswerPage = components['schemas']['ScaleAnswerPage'];
export type ScaleCheckAnswer = components['schemas']['ScaleCheckAnswer'];
export type ScaleCheckRequest = components['schemas']['ScaleCheckRequest'];
export type ScaleOfTest = components['schemas']['ScaleOfTest'];
export type ScaleRequest = components['schemas']['ScaleRequest'];
export type SpeedCheckAnswer = components['schemas']['SpeedCheckAnswer'];
export type SpeedQuantity = components['schemas']['SpeedQuantity'];
export type SpeedRange = components['schemas']['SpeedRange'];
export type SpeedWindowAnswer = components['schemas']['SpeedWindowAnswer'];
export type StepAnswer = components['schemas']['StepAnswer'];
export type StopAnswer = components['schemas']['StopAnswer'];
export type Supersedes = components['schemas']['Supersedes'];
export type TankOfMachine = components['schemas']['TankOfMachine'];
export type TemperatureQuantity = components['schemas']['TemperatureQuantity'];
export type TimeQuantity = components['schemas']['TimeQuantity'];
export type TypedNumber = components['schemas']['TypedNumber'];
export type UncertaintyPart = components['schemas']['UncertaintyPart'];
export type UnitAnswer = components['schemas']['UnitAnswer'];
export type UnitsAnswer = components['schemas']['UnitsAnswer'];
export type UsedDayToDay = components['schemas']['UsedDayToDay'];
export type UsedHistory = components['schemas']['UsedHistory'];
export type UsedRepeatability = components['schemas']['UsedRepeatability'];
export type UsedScaleCheck = components['schemas']['UsedScaleCheck'];
export type UsedValueInForce = components['schemas']['UsedValueInForce'];
export type ValueInForceAnswer = components['schemas']['ValueInForceAnswer'];
export type ValuesInForceAnswer = components['schemas']['ValuesInForceAnswer'];
export type VolumeQuantity = components['schemas']['VolumeQuantity'];
export type WorkspaceAnswer = components['schemas']['WorkspaceAnswer'];
export type WorkspaceAnswerPage = components['schemas']['WorkspaceAnswerPage'];
export type WorkspaceRequest = components['schemas']['WorkspaceRequest'];
export type ResponseBadRequest = components['responses']['BadRequest'];
export type ResponseConflict = components['responses']['Conflict'];
export type ResponseForbidden = components['responses']['Forbidden'];
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
export type ParameterCursor = components['parameters']['Cursor'];
export type ParameterIdempotencyKey = components['parameters']['IdempotencyKey'];
export type ParameterMachine = components['parameters']['Machine'];
export type ParameterMeter = components['parameters']['Meter'];
export type ParameterElement = components['parameters']['Element'];
export type ParameterProduct = components['parameters']['Product'];
export type ParameterLot = components['parameters']['Lot'];
export type ParameterScale = components['parameters']['Scale'];
export type ParameterPlan = components['parameters']['Plan'];
export type ParameterVerdict = components['parameters']['Verdict'];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
            422: components["responses"]["UnprocessableEntity"];
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
            422: components["responses"]["UnprocessableEntity"];
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
                verdict?: components["parameters"]["Verdict"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
            422: components["responses"]["UnprocessableEntity"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                verdict?: components["parameters"]["Verdict"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
    listProducts: {
        parameters: {
            query?: {
                /** @description Retired records too: true or false. Default false. */
                includeRetired?: components["parameters"]["IncludeRetired"];
                /** @description Units of the answer; as-asked keeps what was entered. */
                units?: components["parameters"]["Units"];
                /**
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                verdict?: components["parameters"]["Verdict"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
                verdict?: components["parameters"]["Verdict"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
            422: components["responses"]["UnprocessableEntity"];
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
                    "RateLimit-Policy": components["headers"]["RateLimit-Policy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ValuesInForceAnswer"];
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
                 * @description Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
                 * @example 100
                 */
                limit?: components["parameters"]["Limit"];
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
