-- Who may do what: workspaces, the keys that open them, and a line of what was done with which key.

create table workspaces (
  workspace   text    primary key not null check (length(workspace) between 1 and 36),
  revision    integer not null check (revision >= 1),
  name        text    not null check (length(name) > 0),
  retired     integer not null check (retired in (0, 1)),
  fingerprint text    not null,
  created_at  text    not null,
  updated_at  text    not null
) strict, without rowid;

-- Everything that was stored without keys belongs to this one.
insert into workspaces (workspace, revision, name, retired, fingerprint, created_at, updated_at)
values ('local', 1, 'local', 0, '', strftime('%Y-%m-%dT%H:%M:%fZ', 'now'), strftime('%Y-%m-%dT%H:%M:%fZ', 'now'));

-- Of a key's text only the hash of its secret is kept. Scopes are words with a comma before and after each.
create table keys (
  workspace       text not null references workspaces (workspace),
  id              text not null check (length(id) = 36),
  name            text not null check (length(name) > 0),
  scopes          text not null check (scopes like ',%,'),
  secret_hash     blob not null check (length(secret_hash) = 32),
  fingerprint     text not null,
  created_at      text not null,
  created_by      text,
  expires_at      text,
  revoked_at      text,
  revoked_because text,
  replaces        text,
  replaced_by     text,
  last_used_at    text,
  check ((revoked_at is null) = (revoked_because is null)),
  primary key (workspace, id)
) strict, without rowid;

-- A request shows the id and the secret of its key, not its workspace.
create index keys_by_id on keys (id);

create table audit (
  seq       integer primary key autoincrement,
  workspace text    not null,
  at        text    not null,
  actor     text    not null check (actor in ('key', 'local', 'command')),
  key       text,
  action    text    not null,
  target    text,
  trace     text,
  check ((actor = 'key') = (key is not null))
) strict;

create index audit_by_time   on audit (workspace, at, seq);
create index audit_by_key    on audit (workspace, key, at, seq) where key is not null;
create index audit_by_action on audit (workspace, action, at, seq);

create trigger audit_is_not_changed before update on audit begin select raise(abort, 'audit is only added to'); end;
create trigger audit_is_not_deleted before delete on audit begin select raise(abort, 'audit is only added to'); end;

-- Requests that were turned away are counted by day, so that nobody fills the disk by being turned away.
-- Those of no known key belong to no workspace: ''.
create table refusals (
  workspace text    not null,
  day       text    not null check (length(day) = 10),
  key       text    not null,
  code      text    not null,
  count     integer not null check (count >= 1),
  last_at   text    not null,
  primary key (workspace, day, key, code)
) strict, without rowid;
