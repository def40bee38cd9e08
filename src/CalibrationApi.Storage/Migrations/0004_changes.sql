-- The line of every stored change, in the order in which it was stored; of keys and workspaces nothing. Rows are only ever added,
-- so that whoever read as far as a number never misses one before it.

create table changes (
  workspace      text    not null,
  seq            integer not null check (seq >= 1),
  mark           integer not null,
  kind           text    not null check (length(kind) > 0),
  record         text    not null check (length(record) = 36),
  revision       integer not null check (revision >= 1),
  what           text    not null check (length(what) > 0),
  received_at    text    not null,
  occurred_at    text,
  offset_minutes integer,
  machine        text,
  machine_before text,
  superseded_by  text,
  check ((occurred_at is null) = (offset_minutes is null)),
  primary key (workspace, seq)
) strict, without rowid;

create trigger changes_are_not_changed before update on changes begin select raise(abort, 'changes are only added to'); end;
create trigger changes_are_not_deleted before delete on changes begin select raise(abort, 'changes are only added to'); end;

-- What was stored before stands in the order in which it was received. Of a described thing only its creation and its last change
-- are known. Where several were received in one millisecond, what is referred to goes before what refers to it.
insert into changes (workspace, seq, mark, kind, record, revision, what, received_at, occurred_at, offset_minutes, machine, superseded_by)
select workspace, row_number() over (partition by workspace order by received_at, place, tie), random(), kind, record, revision, what,
       received_at, occurred_at, offset_minutes, machine, superseded_by
from (
  with described as (
    select 1 as place, 'product' as kind, null as machine, workspace, id, revision, retired, created_at, updated_at from products
    union all
    select 2, 'machine', id, workspace, id, revision, retired, created_at, updated_at from machines
    union all
    select 3, 'lot', null, workspace, id, revision, retired, created_at, updated_at from lots
    union all
    select 4, 'scale', null, workspace, id, revision, retired, created_at, updated_at from scales
    union all
    select 5, 'container', null, workspace, id, revision, retired, created_at, updated_at from containers
    union all
    select 6, 'plan', body ->> '$.machine', workspace, id, revision, retired, created_at, updated_at from plans
  )
  select workspace, place, id as tie, kind, id as record, 1 as revision, 'created' as what, created_at as received_at,
         null as occurred_at, null as offset_minutes, machine, null as superseded_by
  from described
  union all
  select workspace, 10 + place, id, kind, id, revision, iif(retired = 1, 'retired', 'changed'), updated_at, null, null, machine, null
  from described where revision > 1
  union all
  select workspace, 20, seq, kind, record, 1, 'recorded', received_at, occurred_at, offset_minutes, machine, null
  from history
  union all
  select s.workspace, 30, s.superseded, s.kind, s.superseded, 2, 'superseded', s.received_at,
         coalesce(t.occurred_at, a.occurred_at, c.occurred_at), coalesce(t.offset_minutes, a.offset_minutes, c.offset_minutes),
         coalesce(t.machine, a.machine), s.replacement
  from supersessions s
  left join catch_tests t  on s.kind = 'catch-test'  and t.workspace = s.workspace and t.id = s.superseded
  left join adoptions a    on s.kind = 'adoption'    and a.workspace = s.workspace and a.id = s.superseded
  left join scale_checks c on s.kind = 'scale-check' and c.workspace = s.workspace and c.id = s.superseded
);
