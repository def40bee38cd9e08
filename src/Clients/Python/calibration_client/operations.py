"""Made from openapi/v1.json by scripts/generate.py. Never edit it by hand."""

from __future__ import annotations

from collections.abc import Generator, Iterable
from typing import Literal, cast, overload

from . import schema
from .call import Caller, Described, Stored, described, key_or_new, stored
from .pages import Pages


class Operations(Caller):
    """The operations of the contract, each a method."""

    def list_audit(
        self,
        *,
        key: str | None = None,
        action: str | None = None,
        from_: str | None = None,
        until: str | None = None,
        order: Literal["newest-first", "oldest-first"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.AuditItem]:
        """Lists what was done in the workspace, and with which key.

        Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed.
        Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            key: Only what was done with the key with this id.
            action: Only this operation, by its name in this contract.
            from_: What was done at or after this instant, RFC 3339.
            until: What was done before this instant, RFC 3339.
            order: newest-first (the default) or oldest-first.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/audit", {"key": key, "action": action, "from": from_, "until": until, "order": order, "limit": limit, "separator": separator, "bom": bom})

    def list_refusals(
        self,
        *,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.RefusalItem]:
        """Counts the requests with keys of the workspace that were turned away.

        By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by
        being turned away; kept for 400 days.

        Args:
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/audit/refusals", {"limit": limit, "separator": separator, "bom": bom})

    def list_refusals_without_key(
        self,
        *,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.RefusalItem]:
        """Counts the requests without a known key that were turned away.

        Of the whole installation, because such a request belongs to no workspace. By day, page by page; follow the next
        link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.

        Args:
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/audit/refusals/without-key", {"limit": limit, "separator": separator, "bom": bom})

    def evaluate_bulk_density(
        self,
        body: schema.BulkDensityRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.BulkDensityAnswer:
        """Finds the bulk density of a product and how sure it is.

        From weighings of a known volume, a filled tank, a test weight or a stated number: the density with its
        interval, in every unit, beside the published densities of its material. A density far from them is challenged,
        a measured one never replaced. With nothing but a reference it gives a published value to start from. On wish
        what a tank holds and how far that goes. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.BulkDensityAnswer", self._ask("POST", "/v1/calculations/bulk-density", query={"units": units}, body=body).json())

    def evaluate_bulk_density_batch(
        self,
        questions: Iterable[schema.BulkDensityRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.BulkDensityAnswerBatchLine, None, None]:
        """Finds the bulk density of a product and how sure it is, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/bulk-density/batch", questions, {"units": units})

    def plan_catch(
        self,
        body: schema.CatchPlanRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.CatchPlanAnswer:
        """Plans a catch test of one or several meters.

        For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,
        container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter,
        the steps with their dependencies, and the cautions. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.CatchPlanAnswer", self._ask("POST", "/v1/calculations/catch-plan", query={"units": units}, body=body).json())

    def plan_catch_batch(
        self,
        questions: Iterable[schema.CatchPlanRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.CatchPlanAnswerBatchLine, None, None]:
        """Plans a catch test of one or several meters, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/catch-plan/batch", questions, {"units": units})

    def evaluate_catch_test(
        self,
        body: schema.CatchTestRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.CatchTestAnswer:
        """Evaluates a catch test.

        From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has
        changed against the value in force, and what to do now. Nothing is stored; the same question always gets the
        same answer.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.CatchTestAnswer", self._ask("POST", "/v1/calculations/catch-test", query={"units": units}, body=body).json())

    def evaluate_catch_test_batch(
        self,
        questions: Iterable[schema.CatchTestRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.CatchTestAnswerBatchLine, None, None]:
        """Evaluates a catch test, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored. Questions can also come as a table (`text/csv`, RFC 4180, with a header)
        of one catch in each row. The column `test` names the test to which a row belongs; rows of a test stand
        together. Other columns are named by the members they give, `scale.accuracyClass`, those of a catch without
        more, `gross`. A quantity has its unit in the header, `gross [kg]`, or in each row in a column beside it, `gross
        unit`. What holds for the whole test stands in its first row; later rows leave it empty or repeat it. A column
        `note` and any whose name begins with `x-` are yours: they are given back with the answer, as is `meter`. Where
        the header has tabs, tabs separate the cells; where it has a semicolon, semicolons do, and numbers may have
        decimal commas; otherwise commas separate them and numbers have decimal points. Errors name row and column.
        Answers come as a table too when `Accept` asks for it: one row for each test, the unit of a quantity in a column
        beside it.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/catch-test/batch", questions, {"units": units})

    def list_catch_tests(
        self,
        *,
        machine: str | None = None,
        meter: str | None = None,
        element: str | None = None,
        product: str | None = None,
        lot: str | None = None,
        scale: str | None = None,
        plan: str | None = None,
        verdict: Literal["investigate", "repeat", "keep", "adopt"] | None = None,
        from_: str | None = None,
        until: str | None = None,
        order: Literal["newest-first", "oldest-first"] | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.HistoryItem]:
        """Lists catch tests.

        By the time when it happened, page by page; follow the next link, which stays true while others add records.
        Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.

        Args:
            machine: Only the machine with this id.
            meter: Only this position of a meter.
            element: Only this metering element.
            product: Only the product with this id.
            lot: Only the lot with this id.
            scale: Only the scale with this id.
            plan: Only the plan with this id.
            verdict: Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks.
            from_: What happened at or after this instant, RFC 3339.
            until: What happened before this instant, RFC 3339.
            order: newest-first (the default) or oldest-first, by the time when it happened.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/catch-tests", {"machine": machine, "meter": meter, "element": element, "product": product, "lot": lot, "scale": scale, "plan": plan, "verdict": verdict, "from": from_, "until": until, "order": order, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def record_catch_test(
        self,
        body: schema.RecordCatchTestRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Stored[schema.CatchTestRecordAnswer]:
        """Records a catch test.

        Machine, product, lot, scale and plan come from their records, the repeatability, the day-to-day component, the
        error of the scale and the value in force from the history where it has them; the answer says what was used. The
        test is kept with its full question, so that it can be evaluated again at any time. A wrong test is superseded
        by another with a reason. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/catch-tests", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_catch_test(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Stored[schema.CatchTestRecordAnswer]: ...
    @overload
    def get_catch_test(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Stored[schema.CatchTestRecordAnswer] | None: ...
    def get_catch_test(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Stored[schema.CatchTestRecordAnswer] | None:
        """Reads a stored catch test.

        As entered, as asked and as answered then, with what came to light since. Quantities come in other units on
        request; sentences stay as written.

        Args:
            units: Units of the answer; as-asked keeps those of the question.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/catch-tests/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else stored(answer)

    def recompute_catch_test(self, id: str) -> schema.RecomputationAnswer:
        """Evaluates a stored catch test again and says whether anything differs.

        The stored question goes through the engine as it is now; every value is compared with the stored answer.
        Nothing is changed.
        """
        return cast("schema.RecomputationAnswer", self._ask("POST", "/v1/catch-tests/{id}/recomputations", id).json())

    def list_changes(
        self,
        *,
        after: str | None = None,
        wait: str | None = None,
        kind: Literal["machine", "product", "lot", "scale", "container", "plan", "catch-test", "adoption", "scale-check"] | None = None,
        machine: str | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> schema.ChangePage:
        """Lists every stored change, in the order in which it was stored.

        What was described, changed, recorded or superseded, whenever it happened: what was entered offline on Sunday
        and arrived on Tuesday stands at its place of Tuesday. Whoever reads on from the after of the last page sees
        each change once and misses none; wait=20s holds the request until there is one. Keys and workspaces are not
        listed. What was stored before the service kept this list stands at its beginning, in the order in which it was
        received, with the creation and the last change of what is described. Page by page; follow the next link. As
        JSON, CSV or NDJSON by the Accept header.

        Args:
            after: What was stored after this cursor: the after of a page, or the cursor of a change. It stays good for
                ever. From the first change without it.
            wait: While there is nothing to list, wait this long for something to be stored: 0s (the default) to 30s.
                The answer can come earlier, also without a change.
            kind: Only records of this kind.
            machine: Only what is about the machine with this id, or was until the change.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return cast("schema.ChangePage", self._ask("GET", "/v1/changes", query={"after": after, "wait": wait, "kind": kind, "machine": machine, "limit": limit, "separator": separator, "bom": bom}).json())

    def list_codes(self) -> schema.CodesAnswer:
        """Lists every code with its cause and what to do.

        The stable codes of errors, refusals, findings, reasons and cautions, each with its cause, its remedy, and the
        statuses or severities that it comes with: for translations and for help inside a client. People read the same
        at `/reference/codes`. Within v1 codes are only added.
        """
        return cast("schema.CodesAnswer", self._ask("GET", "/v1/codes").json())

    def list_containers(
        self,
        *,
        include_retired: bool | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.ContainerAnswer]:
        """Lists every container.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired records too: true or false. Default false.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/containers", {"includeRetired": include_retired, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def create_container(
        self,
        body: schema.ContainerRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.ContainerAnswer, schema.ContainerRequest]:
        """Creates a container.

        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/containers", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_container(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Described[schema.ContainerAnswer, schema.ContainerRequest]: ...
    @overload
    def get_container(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Described[schema.ContainerAnswer, schema.ContainerRequest] | None: ...
    def get_container(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Described[schema.ContainerAnswer, schema.ContainerRequest] | None:
        """Reads a container.

        As entered, with its revision. If-None-Match with the ETag saves the transfer.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/containers/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_container(
        self,
        id: str,
        body: schema.ContainerRequest,
        *,
        if_match: str,
    ) -> Described[schema.ContainerAnswer, schema.ContainerRequest]:
        """Describes a container anew, or retires it.

        The whole description takes the place of the earlier one, so change what you read and send that: its revision
        and times may come along unchanged. Send the ETag of your last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/containers/{id}", id, body=body, headers={"If-Match": if_match}))

    def evaluate_distance_sensor(
        self,
        body: schema.DistanceSensorRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.DistanceSensorAnswer:
        """Evaluates the runs of a distance sensor over a measured course.

        From one or more runs: pulses per distance and the rolling circumference with their uncertainty, slip against
        reference runs, ground speed, the width that passes really cover, what wrong numbers in the controller do to the
        rate, and what to type in. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.DistanceSensorAnswer", self._ask("POST", "/v1/calculations/distance-sensor", query={"units": units}, body=body).json())

    def evaluate_distance_sensor_batch(
        self,
        questions: Iterable[schema.DistanceSensorRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.DistanceSensorAnswerBatchLine, None, None]:
        """Evaluates the runs of a distance sensor over a measured course, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/distance-sensor/batch", questions, {"units": units})

    def evaluate_drive_wheel_turns(
        self,
        body: schema.DriveWheelTurnsRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.DriveWheelTurnsAnswer:
        """Finds the turns of a drive wheel for areas, and evaluates turn tests.

        For ground-driven machines: how often to turn the drive wheel for an area, what has to fall meanwhile in all and
        from each outlet, the rate that turn tests give with its uncertainty, whether it is close enough to its target,
        a first correction of the setting, and outlets that differ from the others. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.DriveWheelTurnsAnswer", self._ask("POST", "/v1/calculations/drive-wheel-turns", query={"units": units}, body=body).json())

    def evaluate_drive_wheel_turns_batch(
        self,
        questions: Iterable[schema.DriveWheelTurnsRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.DriveWheelTurnsAnswerBatchLine, None, None]:
        """Finds the turns of a drive wheel for areas, and evaluates turn tests, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/drive-wheel-turns/batch", questions, {"units": units})

    def evaluate_element_fit(
        self,
        body: schema.ElementFitRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.ElementFitAnswer:
        """Finds which displacement per revolution a metering element needs, and which element at hand comes nearest.

        The displacements with which the meter stays inside its speeds at every rate and ground speed, and the part of
        them that does so with the wanted probability, for density and fill efficiency are only roughly known. Where no
        displacement serves, the answer says what would: a narrower range of speeds or rates, or several elements.
        Elements at hand come best first. Where the mass per revolution of an element was measured, ask `meter-speed`.
        No verdict: only a catch test says what a meter delivers. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.ElementFitAnswer", self._ask("POST", "/v1/calculations/element-fit", query={"units": units}, body=body).json())

    def evaluate_element_fit_batch(
        self,
        questions: Iterable[schema.ElementFitRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.ElementFitAnswerBatchLine, None, None]:
        """Finds which displacement per revolution a metering element needs, and which element at hand comes nearest, for
        many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/element-fit/batch", questions, {"units": units})

    def list_history(
        self,
        *,
        machine: str | None = None,
        meter: str | None = None,
        element: str | None = None,
        product: str | None = None,
        lot: str | None = None,
        scale: str | None = None,
        plan: str | None = None,
        verdict: Literal["investigate", "repeat", "keep", "adopt", "passed", "failed"] | None = None,
        from_: str | None = None,
        until: str | None = None,
        order: Literal["newest-first", "oldest-first"] | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.HistoryItem]:
        """Lists everything that happened.

        By the time when it happened, page by page; follow the next link, which stays true while others add records.
        Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.

        Args:
            machine: Only the machine with this id.
            meter: Only this position of a meter.
            element: Only this metering element.
            product: Only the product with this id.
            lot: Only the lot with this id.
            scale: Only the scale with this id.
            plan: Only the plan with this id.
            verdict: Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks.
            from_: What happened at or after this instant, RFC 3339.
            until: What happened before this instant, RFC 3339.
            order: newest-first (the default) or oldest-first, by the time when it happened.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/history", {"machine": machine, "meter": meter, "element": element, "product": product, "lot": lot, "scale": scale, "plan": plan, "verdict": verdict, "from": from_, "until": until, "order": order, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def list_keys(
        self,
        *,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.KeyAnswer]:
        """Lists the keys of the workspace.

        Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by
        the Accept header.

        Args:
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/keys", {"limit": limit, "separator": separator, "bom": bom})

    def create_key(self, body: schema.KeyRequest, *, idempotency_key: str | None = None) -> Stored[schema.NewKeyAnswer]:
        """Makes a key for this workspace.

        The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make
        another.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/keys", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_key(self, id: str, *, if_none_match: None = None) -> Stored[schema.KeyAnswer]: ...
    @overload
    def get_key(self, id: str, *, if_none_match: str) -> Stored[schema.KeyAnswer] | None: ...
    def get_key(self, id: str, *, if_none_match: str | None = None) -> Stored[schema.KeyAnswer] | None:
        """Reads a key.

        Everything but its text, which nobody keeps.

        Args:
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/keys/{id}", id, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else stored(answer)

    def rotate_key(
        self,
        id: str,
        body: schema.RotationRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Stored[schema.NewKeyAnswer]:
        """Makes a key that takes the place of another.

        The new key has the name and the scopes of the old one, which goes on until the stated instant, so that every
        client can change over in between. The text of the new key is in the answer once and is stored nowhere.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/keys/{id}/rotations", id, body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    def revoke_key(
        self,
        id: str,
        body: schema.RevocationRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Stored[schema.KeyAnswer]:
        """Revokes a key.

        It opens nothing from the next request on. A key stays revoked; to go on, make another.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/keys/{id}/revocations", id, body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    def list_lots(
        self,
        *,
        include_retired: bool | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.LotAnswer]:
        """Lists every lot of a product.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired records too: true or false. Default false.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/lots", {"includeRetired": include_retired, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def create_lot(
        self,
        body: schema.LotRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.LotAnswer, schema.LotRequest]:
        """Creates a lot of a product.

        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/lots", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_lot(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Described[schema.LotAnswer, schema.LotRequest]: ...
    @overload
    def get_lot(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Described[schema.LotAnswer, schema.LotRequest] | None: ...
    def get_lot(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Described[schema.LotAnswer, schema.LotRequest] | None:
        """Reads a lot of a product.

        As entered, with its revision. If-None-Match with the ETag saves the transfer.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/lots/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_lot(
        self,
        id: str,
        body: schema.LotRequest,
        *,
        if_match: str,
    ) -> Described[schema.LotAnswer, schema.LotRequest]:
        """Describes a lot of a product anew, or retires it.

        The whole description takes the place of the earlier one, so change what you read and send that: its revision
        and times may come along unchanged. Send the ETag of your last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/lots/{id}", id, body=body, headers={"If-Match": if_match}))

    def list_machines(
        self,
        *,
        include_retired: bool | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.MachineAnswer]:
        """Lists every machine with its meters.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired records too: true or false. Default false.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/machines", {"includeRetired": include_retired, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def create_machine(
        self,
        body: schema.MachineRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.MachineAnswer, schema.MachineRequest]:
        """Creates a machine with its meters.

        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/machines", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_machine(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Described[schema.MachineAnswer, schema.MachineRequest]: ...
    @overload
    def get_machine(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Described[schema.MachineAnswer, schema.MachineRequest] | None: ...
    def get_machine(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Described[schema.MachineAnswer, schema.MachineRequest] | None:
        """Reads a machine with its meters.

        As entered, with its revision. If-None-Match with the ETag saves the transfer.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/machines/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_machine(
        self,
        id: str,
        body: schema.MachineRequest,
        *,
        if_match: str,
    ) -> Described[schema.MachineAnswer, schema.MachineRequest]:
        """Describes a machine with its meters anew, or retires it.

        The whole description takes the place of the earlier one, so change what you read and send that: its revision
        and times may come along unchanged. Send the ETag of your last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/machines/{id}", id, body=body, headers={"If-Match": if_match}))

    def evaluate_meter_speed(
        self,
        body: schema.MeterSpeedRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.MeterSpeedAnswer:
        """Finds meter speeds, windows and the best metering element.

        For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which
        each rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its
        limits. Elements come best first. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.MeterSpeedAnswer", self._ask("POST", "/v1/calculations/meter-speed", query={"units": units}, body=body).json())

    def evaluate_meter_speed_batch(
        self,
        questions: Iterable[schema.MeterSpeedRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.MeterSpeedAnswerBatchLine, None, None]:
        """Finds meter speeds, windows and the best metering element, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/meter-speed/batch", questions, {"units": units})

    def evaluate_new_lot(
        self,
        body: schema.NewLotRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.NewLotAnswer:
        """Finds what a new lot or treatment changes, and whether to test.

        The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of
        bulk densities; whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The
        rule: test now when a density is unknown, or when the value in force is within the tolerance of the truth with a
        probability under 0.80; no test when lot, treatment and density are the same and that probability is 0.95 or
        more; otherwise test at the next fill. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.NewLotAnswer", self._ask("POST", "/v1/calculations/new-lot", query={"units": units}, body=body).json())

    def evaluate_new_lot_batch(
        self,
        questions: Iterable[schema.NewLotRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.NewLotAnswerBatchLine, None, None]:
        """Finds what a new lot or treatment changes, and whether to test, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/new-lot/batch", questions, {"units": units})

    def plan_catch_of_plan(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.CatchPlanAnswer:
        """Computes the catch plan of a stored plan.

        Machine, products, lots, scale and container come from their records, the mass per revolution from the value in
        force, from the plan's start value where none is, else from the volume of the element and the bulk density.
        Computed anew with each call; nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the plan.
        """
        return cast("schema.CatchPlanAnswer", self._ask("GET", "/v1/plans/{id}/catch-plan", id, query={"units": units}).json())

    def set_up_of_plan(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.PlanSetUpAnswer:
        """Computes rates and set-up of a stored plan.

        One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether
        each element reaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is
        placed with the seed against published limits; and what a new lot means for the value in force. What cannot be
        computed yet is listed under missing, with what to add; the rest is answered all the same. Computed anew with
        each call; nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the plan and its records.
        """
        return cast("schema.PlanSetUpAnswer", self._ask("GET", "/v1/plans/{id}/set-up", id, query={"units": units}).json())

    def list_plans(
        self,
        *,
        include_retired: bool | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.PlanAnswer]:
        """Lists every plan for a field.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired records too: true or false. Default false.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/plans", {"includeRetired": include_retired, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def create_plan(
        self,
        body: schema.PlanRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.PlanAnswer, schema.PlanRequest]:
        """Creates a plan for a field.

        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/plans", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_plan(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Described[schema.PlanAnswer, schema.PlanRequest]: ...
    @overload
    def get_plan(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Described[schema.PlanAnswer, schema.PlanRequest] | None: ...
    def get_plan(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Described[schema.PlanAnswer, schema.PlanRequest] | None:
        """Reads a plan for a field.

        As entered, with its revision. If-None-Match with the ETag saves the transfer.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/plans/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_plan(
        self,
        id: str,
        body: schema.PlanRequest,
        *,
        if_match: str,
    ) -> Described[schema.PlanAnswer, schema.PlanRequest]:
        """Describes a plan for a field anew, or retires it.

        The whole description takes the place of the earlier one, so change what you read and send that: its revision
        and times may come along unchanged. Send the ETag of your last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/plans/{id}", id, body=body, headers={"If-Match": if_match}))

    def evaluate_product_rate(
        self,
        body: schema.ProductRateRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.ProductRateAnswer:
        """Finds the rates of products that supply the nutrients wanted.

        The rates that meet every target at the least cost, or the least total mass where there are no prices, after
        credits and fixed rates are taken off: what each product supplies, what remains over, what it costs, packages
        over an area. Among equal costs the least mass is taken, then earlier products before later ones. Where the
        targets cannot be met, the nearest rates: limits (at-most, most) are kept as far as they can be, then the sum
        over all targets of what is missing, or for exact targets too much, each divided by its target, is least;
        findings say why. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.ProductRateAnswer", self._ask("POST", "/v1/calculations/product-rate", query={"units": units}, body=body).json())

    def evaluate_product_rate_batch(
        self,
        questions: Iterable[schema.ProductRateRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.ProductRateAnswerBatchLine, None, None]:
        """Finds the rates of products that supply the nutrients wanted, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/product-rate/batch", questions, {"units": units})

    def list_products(
        self,
        *,
        include_retired: bool | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.ProductAnswer]:
        """Lists every product.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired records too: true or false. Default false.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/products", {"includeRetired": include_retired, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def create_product(
        self,
        body: schema.ProductRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.ProductAnswer, schema.ProductRequest]:
        """Creates a product.

        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/products", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_product(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Described[schema.ProductAnswer, schema.ProductRequest]: ...
    @overload
    def get_product(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Described[schema.ProductAnswer, schema.ProductRequest] | None: ...
    def get_product(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Described[schema.ProductAnswer, schema.ProductRequest] | None:
        """Reads a product.

        As entered, with its revision. If-None-Match with the ETag saves the transfer.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/products/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_product(
        self,
        id: str,
        body: schema.ProductRequest,
        *,
        if_match: str,
    ) -> Described[schema.ProductAnswer, schema.ProductRequest]:
        """Describes a product anew, or retires it.

        The whole description takes the place of the earlier one, so change what you read and send that: its revision
        and times may come along unchanged. Send the ETag of your last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/products/{id}", id, body=body, headers={"If-Match": if_match}))

    def list_scale_checks(
        self,
        *,
        scale: str | None = None,
        verdict: Literal["passed", "failed"] | None = None,
        from_: str | None = None,
        until: str | None = None,
        order: Literal["newest-first", "oldest-first"] | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.HistoryItem]:
        """Lists checks of scales.

        By the time when it happened, page by page; follow the next link, which stays true while others add records.
        Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.

        Args:
            scale: Only the scale with this id.
            verdict: Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks.
            from_: What happened at or after this instant, RFC 3339.
            until: What happened before this instant, RFC 3339.
            order: newest-first (the default) or oldest-first, by the time when it happened.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/scale-checks", {"scale": scale, "verdict": verdict, "from": from_, "until": until, "order": order, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def record_scale_check(
        self,
        body: schema.ScaleCheckRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Stored[schema.ScaleCheckAnswer]:
        """Records a check of a scale against known masses.

        The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the
        scale's limit. After a failed check, tests since the last good one say so when they are read. Send an
        Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/scale-checks", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_scale_check(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Stored[schema.ScaleCheckAnswer]: ...
    @overload
    def get_scale_check(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Stored[schema.ScaleCheckAnswer] | None: ...
    def get_scale_check(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Stored[schema.ScaleCheckAnswer] | None:
        """Reads a check of a scale.

        As entered and as evaluated then.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/scale-checks/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else stored(answer)

    def list_scales(
        self,
        *,
        include_retired: bool | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.ScaleAnswer]:
        """Lists every scale.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired records too: true or false. Default false.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/scales", {"includeRetired": include_retired, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def create_scale(
        self,
        body: schema.ScaleRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.ScaleAnswer, schema.ScaleRequest]:
        """Creates a scale.

        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/scales", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_scale(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Described[schema.ScaleAnswer, schema.ScaleRequest]: ...
    @overload
    def get_scale(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Described[schema.ScaleAnswer, schema.ScaleRequest] | None: ...
    def get_scale(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Described[schema.ScaleAnswer, schema.ScaleRequest] | None:
        """Reads a scale.

        As entered, with its revision. If-None-Match with the ETag saves the transfer.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/scales/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_scale(
        self,
        id: str,
        body: schema.ScaleRequest,
        *,
        if_match: str,
    ) -> Described[schema.ScaleAnswer, schema.ScaleRequest]:
        """Describes a scale anew, or retires it.

        The whole description takes the place of the earlier one, so change what you read and send that: its revision
        and times may come along unchanged. Send the ETag of your last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/scales/{id}", id, body=body, headers={"If-Match": if_match}))

    def evaluate_seed_row_limit(
        self,
        body: schema.SeedRowLimitRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.SeedRowLimitAnswer:
        """Compares fertilizer placed with the seed with published limits.

        The share of the seedbed that is used, the nutrients that lie with the seed in the worst zone, and every limit
        that is held for the crop and the region, with its source, year, place and conditions. A limit is used for its
        own crop, soil, moisture, opener and place only; where a source prints no number, there is none here. Where
        sources differ, all are shown and the stricter one leads. No answer says that a load is safe: local guidance,
        the product label and a licensed adviser go first. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question. Printed numbers keep the unit of their
                source.
        """
        return cast("schema.SeedRowLimitAnswer", self._ask("POST", "/v1/calculations/seed-row-limit", query={"units": units}, body=body).json())

    def evaluate_seed_row_limit_batch(
        self,
        questions: Iterable[schema.SeedRowLimitRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.SeedRowLimitAnswerBatchLine, None, None]:
        """Compares fertilizer placed with the seed with published limits, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/seed-row-limit/batch", questions, {"units": units})

    def evaluate_seeding_rate(
        self,
        body: schema.SeedingRateRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.SeedingRateAnswer:
        """Finds the seeding rate for a stand, or the stand of a rate.

        From plants per area, seeds per area, seeds in a length of row, or a mass per area: all the others, with seeds
        per length of row, packages and cost. Units are exact; a rate made by dividing by 10 can be compared. What is
        unusual for the crop is said with the published range. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.SeedingRateAnswer", self._ask("POST", "/v1/calculations/seeding-rate", query={"units": units}, body=body).json())

    def evaluate_seeding_rate_batch(
        self,
        questions: Iterable[schema.SeedingRateRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.SeedingRateAnswerBatchLine, None, None]:
        """Finds the seeding rate for a stand, or the stand of a rate, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/seeding-rate/batch", questions, {"units": units})

    def evaluate_stand_count(
        self,
        body: schema.StandCountRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.StandCountAnswer:
        """Evaluates a stand count.

        From plants counted along rows, in frames or in hoops: plants per area with an interval that also holds for few
        and for clumped counts, how the counts scatter, how many of them a wanted precision takes, and which share of
        the seeds came up, with germination and without. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.StandCountAnswer", self._ask("POST", "/v1/calculations/stand-count", query={"units": units}, body=body).json())

    def evaluate_stand_count_batch(
        self,
        questions: Iterable[schema.StandCountRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.StandCountAnswerBatchLine, None, None]:
        """Evaluates a stand count, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/stand-count/batch", questions, {"units": units})

    def evaluate_stand_risk(
        self,
        body: schema.StandRiskRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.StandRiskAnswer:
        """Finds the rate that reaches a minimum stand with a wanted probability.

        Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The
        answer has the rate that reaches the minimum stand all the same with the wanted probability, what its margin
        costs, and how probable the minimum stand is at a rate of your own. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.StandRiskAnswer", self._ask("POST", "/v1/calculations/stand-risk", query={"units": units}, body=body).json())

    def evaluate_stand_risk_batch(
        self,
        questions: Iterable[schema.StandRiskRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.StandRiskAnswerBatchLine, None, None]:
        """Finds the rate that reaches a minimum stand with a wanted probability, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/stand-risk/batch", questions, {"units": units})

    def list_units(self) -> schema.UnitsAnswer:
        """Lists every unit with its exact factor.

        The closed list of units that payloads take, by dimension, each with its exact factor to SI as a ratio of two
        whole numbers and its codes in UCUM, UN/ECE Recommendation 20 and AgGateway ADAPT where they have one.
        """
        return cast("schema.UnitsAnswer", self._ask("GET", "/v1/units").json())

    def list_adoptions(
        self,
        *,
        machine: str | None = None,
        meter: str | None = None,
        element: str | None = None,
        product: str | None = None,
        lot: str | None = None,
        from_: str | None = None,
        until: str | None = None,
        order: Literal["newest-first", "oldest-first"] | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.HistoryItem]:
        """Lists adoptions.

        By the time when it happened, page by page; follow the next link, which stays true while others add records.
        Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.

        Args:
            machine: Only the machine with this id.
            meter: Only this position of a meter.
            element: Only this metering element.
            product: Only the product with this id.
            lot: Only the lot with this id.
            from_: What happened at or after this instant, RFC 3339.
            until: What happened before this instant, RFC 3339.
            order: newest-first (the default) or oldest-first, by the time when it happened.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/adoptions", {"machine": machine, "meter": meter, "element": element, "product": product, "lot": lot, "from": from_, "until": until, "order": order, "units": units, "limit": limit, "separator": separator, "bom": bom})

    def adopt_value(
        self,
        body: schema.AdoptionRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Stored[schema.AdoptionAnswer]:
        """Adopts a value.

        From its time on, the value is in force for its meter, element, setting and product, until a later one is
        adopted. The number is stored as typed in. Of two values adopted for the same time the one received last is in
        force; both stay on record. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/adoptions", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_adoption(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: None = None,
    ) -> Stored[schema.AdoptionAnswer]: ...
    @overload
    def get_adoption(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str,
    ) -> Stored[schema.AdoptionAnswer] | None: ...
    def get_adoption(
        self,
        id: str,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
        if_none_match: str | None = None,
    ) -> Stored[schema.AdoptionAnswer] | None:
        """Reads an adoption.

        As entered, with the mass per revolution that follows and with what came to light since.

        Args:
            units: Units of the answer; as-asked keeps what was entered.
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/adoptions/{id}", id, query={"units": units}, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else stored(answer)

    def list_values_in_force(
        self,
        id: str,
        *,
        meter: str | None = None,
        element: str | None = None,
        setting: str | None = None,
        product: str | None = None,
        at: str | None = None,
        units: Literal["as-asked", "metric", "us"] | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.ValueInForceAnswer]:
        """Lists the values in force on a machine.

        For each meter, element, setting and product with an adopted value: the number in the controller, since when, by
        whom and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind
        it is said, but the number stays in force until another is adopted, because the controller uses it until then.
        Page by page, at most 500 at once; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            meter: Only this position.
            element: Only this metering element.
            setting: Only this setting.
            product: Only the product with this id.
            at: In force at this instant, RFC 3339; default now.
            units: Units of the answer; as-asked keeps what was entered.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/machines/{id}/values-in-force", {"meter": meter, "element": element, "setting": setting, "product": product, "at": at, "units": units, "limit": limit, "separator": separator, "bom": bom}, id)

    def evaluate_volume_check(
        self,
        body: schema.VolumeCheckRequest,
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> schema.VolumeCheckAnswer:
        """Finds what a metering element should deliver by its volume.

        Displacement times bulk density times fill efficiency, with an interval; as a start value for a catch plan. A
        value measured or in force is compared with it: how far off it is, which fill efficiency it implies, and what
        may be wrong when that is more than the element holds. No verdict: only a catch test says what the meter
        delivers. Nothing is stored.

        Args:
            units: Units of the answer; as-asked takes those of the question.
        """
        return cast("schema.VolumeCheckAnswer", self._ask("POST", "/v1/calculations/volume-check", query={"units": units}, body=body).json())

    def evaluate_volume_check_batch(
        self,
        questions: Iterable[schema.VolumeCheckRequest],
        *,
        units: Literal["as-asked", "metric", "us"] | None = None,
    ) -> Generator[schema.VolumeCheckAnswerBatchLine, None, None]:
        """Finds what a metering element should deliver by its volume, for many questions at once.

        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its
        problem, with the status that it would have alone, and the others go on. Blank lines are counted but ask
        nothing; every other line gets exactly one answer, so that a client can count them: a connection that ends early
        has cut the answer off. A line may have 64 KiB unless the service is set otherwise, the body any length. Answers
        begin while questions still come. Read them while you send: once some megabytes of answers are unread, no more
        questions are read. Nothing is stored.

        Args:
            units: Units of all answers; as-asked takes for each those of its question.
        """
        return self._batch("/v1/calculations/volume-check/batch", questions, {"units": units})

    def create_key_of_workspace(
        self,
        id: str,
        body: schema.KeyRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Stored[schema.NewKeyAnswer]:
        """Makes a key for a workspace, as its first one.

        For whoever runs the installation. From then on the administrators of that workspace make their own keys. The
        audit of both workspaces tells of it.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return stored(self._ask("POST", "/v1/workspaces/{id}/keys", id, body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    def list_workspaces(
        self,
        *,
        include_retired: bool | None = None,
        limit: int | None = None,
        separator: Literal["comma", "semicolon"] | None = None,
        bom: Literal["yes", "no"] | None = None,
    ) -> Pages[schema.WorkspaceAnswer]:
        """Lists the workspaces of the installation.

        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.

        Args:
            include_retired: Retired ones too: true or false. Default false.
            limit: Items on a page, 1 to 1000.
            separator: What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal
                commas.
            bom: Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the
                default).
        """
        return self._pages("/v1/workspaces", {"includeRetired": include_retired, "limit": limit, "separator": separator, "bom": bom})

    def create_workspace(
        self,
        body: schema.WorkspaceRequest,
        *,
        idempotency_key: str | None = None,
    ) -> Described[schema.WorkspaceAnswer, schema.WorkspaceRequest]:
        """Creates a workspace.

        It has no keys yet; make its first one next. Send an Idempotency-Key, or your own id, to be able to repeat the
        request safely.

        Args:
            idempotency_key: A text of your own, the same for each attempt to store the same thing. The client makes one
                if you give none.
        """
        return described(self._ask("POST", "/v1/workspaces", body=body, headers={"Idempotency-Key": key_or_new(idempotency_key)}))

    @overload
    def get_workspace(
        self,
        id: str,
        *,
        if_none_match: None = None,
    ) -> Described[schema.WorkspaceAnswer, schema.WorkspaceRequest]: ...
    @overload
    def get_workspace(
        self,
        id: str,
        *,
        if_none_match: str,
    ) -> Described[schema.WorkspaceAnswer, schema.WorkspaceRequest] | None: ...
    def get_workspace(
        self,
        id: str,
        *,
        if_none_match: str | None = None,
    ) -> Described[schema.WorkspaceAnswer, schema.WorkspaceRequest] | None:
        """Reads a workspace.

        If-None-Match with the ETag saves the transfer.

        Args:
            if_none_match: The entity tag of the revision that you have; the answer is None if the record is still that
                one.
        """
        answer = self._ask("GET", "/v1/workspaces/{id}", id, headers={"If-None-Match": if_none_match})
        return None if answer.status == 304 else described(answer)

    def replace_workspace(
        self,
        id: str,
        body: schema.WorkspaceRequest,
        *,
        if_match: str,
    ) -> Described[schema.WorkspaceAnswer, schema.WorkspaceRequest]:
        """Renames a workspace, retires it or brings it back.

        The keys of a retired workspace open nothing from the next request on; its records stay. Send the ETag of your
        last GET as If-Match.

        Args:
            if_match: The entity tag of the revision that you are changing. If somebody else changed it first,
                `VersionConflict` is raised.
        """
        return described(self._ask("PUT", "/v1/workspaces/{id}", id, body=body, headers={"If-Match": if_match}))
