-- Ids are told apart within a kind of record, and a client may use one of its own for two kinds: a supersession is one of a kind.

create table supersessions_by_kind (
  workspace   text not null,
  kind        text not null check (kind in ('catch-test', 'adoption', 'scale-check')),
  superseded  text not null,
  replacement text not null,
  reason      text not null,
  received_at text not null,
  primary key (workspace, kind, superseded)
) strict, without rowid;

insert into supersessions_by_kind (workspace, kind, superseded, replacement, reason, received_at)
select workspace, kind, superseded, replacement, reason, received_at from supersessions;

drop table supersessions;
alter table supersessions_by_kind rename to supersessions;

-- A list that is filtered by something rare finds it without walking through everything else.

create index history_by_position on history (workspace, meter, occurred_at, seq) where meter is not null;
create index history_by_element  on history (workspace, element, occurred_at, seq) where element is not null;
create index history_by_verdict  on history (workspace, verdict, occurred_at, seq) where verdict is not null;
