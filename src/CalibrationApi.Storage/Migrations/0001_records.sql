-- Things that are described and may be described anew: one row each, with the number of its revision.
-- Times are UTC in RFC 3339 with milliseconds, so that text order is time order.

create table secrets (
  name  text primary key,
  value blob not null
) strict;

create table machines (
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  revision    integer not null check (revision >= 1),
  name        text    not null,
  retired     integer not null check (retired in (0, 1)),
  body        text    not null check (json_valid(body)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null,
  primary key (workspace, id)
) strict;

create table products (
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  revision    integer not null check (revision >= 1),
  name        text    not null,
  retired     integer not null check (retired in (0, 1)),
  body        text    not null check (json_valid(body)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null,
  primary key (workspace, id)
) strict;

create table lots (
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  revision    integer not null check (revision >= 1),
  name        text    not null,
  retired     integer not null check (retired in (0, 1)),
  body        text    not null check (json_valid(body)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null,
  primary key (workspace, id)
) strict;

create table scales (
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  revision    integer not null check (revision >= 1),
  name        text    not null,
  retired     integer not null check (retired in (0, 1)),
  body        text    not null check (json_valid(body)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null,
  primary key (workspace, id)
) strict;

create table containers (
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  revision    integer not null check (revision >= 1),
  name        text    not null,
  retired     integer not null check (retired in (0, 1)),
  body        text    not null check (json_valid(body)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null,
  primary key (workspace, id)
) strict;

create table plans (
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  revision    integer not null check (revision >= 1),
  name        text    not null,
  retired     integer not null check (retired in (0, 1)),
  body        text    not null check (json_valid(body)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null,
  primary key (workspace, id)
) strict;

-- Evidence: rows are only ever added.

create table catch_tests (
  seq            integer primary key autoincrement,
  workspace      text    not null,
  id             text    not null check (length(id) = 36),
  machine        text    not null,
  meter          text    not null,
  element        text    not null,
  setting        text    not null,
  product        text    not null,
  lot            text,
  scale          text    not null,
  plan           text,
  verdict        text    not null check (verdict in ('investigate', 'repeat', 'keep', 'adopt')),
  value          real    not null check (value > 0),
  random         real    not null check (random >= 0),
  occurred_at    text    not null,
  received_at    text    not null,
  entered        text    not null check (json_valid(entered)),
  resolved       text    not null check (json_valid(resolved)),
  answer         text    not null check (json_valid(answer)),
  context        text    not null check (json_valid(context)),
  offset_minutes integer not null,
  engine_version text    not null,
  fingerprint    text    not null,
  unique (workspace, id),
  foreign key (workspace, machine) references machines (workspace, id),
  foreign key (workspace, product) references products (workspace, id),
  foreign key (workspace, lot)     references lots (workspace, id),
  foreign key (workspace, scale)   references scales (workspace, id),
  foreign key (workspace, plan)    references plans (workspace, id)
) strict;

create index catch_tests_by_series on catch_tests (workspace, machine, meter, element, setting, product, occurred_at, seq);

-- One row per catch: what was entered, and the canonical numbers that the history of a series is made of.
create table catches (
  workspace     text    not null,
  test          integer not null references catch_tests (seq),
  position      integer not null check (position >= 0),
  counted       integer not null check (counted in (0, 1)),
  net_entered   real    not null,
  net_unit      text    not null,
  net_kilograms real    not null check (net_kilograms > 0),
  revolutions   real    not null check (revolutions > 0),
  value         real    not null check (value > 0),
  variance      real    not null check (variance >= 0),
  primary key (test, position)
) strict, without rowid;

create table adoptions (
  seq           integer primary key autoincrement,
  workspace     text    not null,
  id            text    not null check (length(id) = 36),
  machine       text    not null,
  meter         text    not null,
  element       text    not null,
  setting       text    not null,
  product       text    not null,
  lot           text,
  test          text,
  entered_value real    not null,
  entered_unit  text    not null,
  value         real    not null check (value > 0),
  occurred_at   text    not null,
  offset_minutes integer not null,
  received_at   text    not null,
  body          text    not null check (json_valid(body)),
  fingerprint   text    not null,
  unique (workspace, id),
  foreign key (workspace, machine) references machines (workspace, id),
  foreign key (workspace, product) references products (workspace, id),
  foreign key (workspace, lot)     references lots (workspace, id),
  foreign key (workspace, test)    references catch_tests (workspace, id)
) strict;

create index adoptions_by_series on adoptions (workspace, machine, meter, element, setting, product, occurred_at, seq);

create table scale_checks (
  seq         integer primary key autoincrement,
  workspace   text    not null,
  id          text    not null check (length(id) = 36),
  scale       text    not null,
  error       real    not null,
  uncertainty real    not null check (uncertainty >= 0),
  passed      integer not null check (passed in (0, 1)),
  occurred_at text    not null,
  offset_minutes integer not null,
  received_at text    not null,
  body        text    not null check (json_valid(body)),
  answer      text    not null check (json_valid(answer)),
  fingerprint text    not null,
  unique (workspace, id),
  foreign key (workspace, scale) references scales (workspace, id)
) strict;

create index scale_checks_by_scale on scale_checks (workspace, scale, occurred_at, seq);

-- A record is corrected by another one with a reason; at most once, and nothing is overwritten.
create table supersessions (
  workspace   text not null,
  superseded  text not null,
  kind        text not null check (kind in ('catch-test', 'adoption', 'scale-check')),
  replacement text not null,
  reason      text not null,
  received_at text not null,
  primary key (workspace, superseded)
) strict, without rowid;

-- The line of everything that happened, with what lists are filtered and read by. Values are canonical.
create table history (
  seq             integer primary key autoincrement,
  workspace       text    not null,
  kind            text    not null check (kind in ('catch-test', 'adoption', 'scale-check')),
  record          text    not null,
  machine         text,
  meter           text,
  element         text,
  setting         text,
  product         text,
  lot             text,
  scale           text,
  plan            text,
  verdict         text,
  value           real,
  expanded        real,
  change          real,
  entered_unit    text,
  recorded_by     text,
  occurred_at     text    not null,
  offset_minutes  integer not null,
  received_at     text    not null,
  supersedes      text,
  reason          text
) strict;

create index history_by_time    on history (workspace, occurred_at, seq);
create index history_by_kind    on history (workspace, kind, occurred_at, seq);
create index history_by_machine on history (workspace, machine, occurred_at, seq) where machine is not null;
create index history_by_meter   on history (workspace, machine, meter, occurred_at, seq) where machine is not null;
create index history_by_product on history (workspace, product, occurred_at, seq) where product is not null;
create index history_by_lot     on history (workspace, lot, occurred_at, seq) where lot is not null;
create index history_by_scale   on history (workspace, scale, occurred_at, seq) where scale is not null;
create index history_by_plan    on history (workspace, plan, occurred_at, seq) where plan is not null;

-- The answers of storing requests, so that a repeated one gets the first answer again.
create table idempotency_keys (
  workspace   text    not null,
  route       text    not null,
  key         text    not null,
  fingerprint text    not null,
  status      integer not null,
  location    text,
  etag        text,
  body        blob    not null,
  created_at  text    not null,
  primary key (workspace, route, key)
) strict, without rowid;

create index idempotency_keys_by_age on idempotency_keys (created_at);
