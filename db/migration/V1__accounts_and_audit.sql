-- One row says what this database is for; starting servers lock it before they decide anything.
create table installation (
    id integer primary key,
    kind text,
    claimed_at timestamp with time zone,
    constraint installation_one_row check (id = 1),
    constraint installation_kind check (kind in ('demo', 'team'))
);
insert into installation (id) values (1);

create table person (
    id uuid primary key,
    user_name text not null,
    display_name text not null,
    password_hash text not null,
    password_change_due boolean not null,
    active boolean not null,
    failed_sign_ins integer default 0 not null,
    locked_until timestamp with time zone,
    created_at timestamp with time zone not null,
    constraint person_user_name unique (user_name)
);

create table person_role (
    person_id uuid not null references person (id),
    role text not null,
    primary key (person_id, role)
);

create table api_token (
    id uuid primary key,
    person_id uuid not null references person (id),
    name text not null,
    token_hash text not null,
    created_at timestamp with time zone not null,
    last_used_at timestamp with time zone,
    revoked_at timestamp with time zone,
    constraint api_token_hash unique (token_hash)
);
create index api_token_person on api_token (person_id);

-- At most one row: the code with which the first administrator is made.
create table setup_code (
    id integer primary key,
    code_hash text not null,
    created_at timestamp with time zone not null,
    used_at timestamp with time zone,
    constraint setup_code_one_row check (id = 1)
);

-- Append-only. Each row's hash covers its text and the hash of the row before it.
create table audit_event (
    sequence_number bigint primary key,
    happened_at timestamp with time zone not null,
    actor text not null,
    action text not null,
    subject_kind text not null,
    subject_id text not null,
    detail text not null,
    previous_hash text not null,
    hash text not null
);
create index audit_event_subject on audit_event (subject_kind, subject_id);

create table audit_head (
    id integer primary key,
    sequence_number bigint not null,
    hash text not null,
    constraint audit_head_one_row check (id = 1)
);
insert into audit_head (id, sequence_number, hash)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

-- The two tables that Spring Session expects, with its names.
create table spring_session (
    primary_id char(36) not null primary key,
    session_id char(36) not null,
    creation_time bigint not null,
    last_access_time bigint not null,
    max_inactive_interval integer not null,
    expiry_time bigint not null,
    principal_name varchar(100)
);
create unique index spring_session_by_id on spring_session (session_id);
create index spring_session_by_expiry on spring_session (expiry_time);
create index spring_session_by_principal on spring_session (principal_name);

create table spring_session_attributes (
    session_primary_id char(36) not null references spring_session (primary_id) on delete cascade,
    attribute_name varchar(200) not null,
    attribute_bytes bytea not null,
    primary key (session_primary_id, attribute_name)
);
