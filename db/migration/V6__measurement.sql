-- A librarian's word that a finding of a sweep does not matter; one for each kind of finding.
create table finding_acceptance (
    id          uuid primary key,
    sweep_id    uuid not null references sweep (id),
    kind        text not null,
    finding     text not null,
    reason      text not null,
    person_id   uuid not null,
    person      text not null,
    accepted_at timestamp with time zone not null,
    unique (sweep_id, kind)
);

-- How the columns of an instrument's text files are read, kept under a name.
create table column_mapping (
    id      uuid primary key,
    name    text not null unique,
    columns text not null,
    author  text not null,
    made_at timestamp with time zone not null
);

-- Sweeps of fixtures open, shorted and with a known load, to take the fixture out of other sweeps.
create table fixture_sweep (
    id         uuid primary key,
    name       text not null unique,
    standard   text not null,
    load_ohm   double precision,
    raw_sha256 text not null references raw_file (sha256),
    file_name  text not null,
    author_id  uuid not null,
    author     text not null,
    made_at    timestamp with time zone not null,
    document   text not null,
    sha256     text not null
);

-- What was measured on an assembled bank: impedance, loop gain, ripple or a load step.
create table bench_record (
    id          uuid primary key,
    revision_id uuid not null references bank_revision (id),
    kind        text not null,
    raw_sha256  text not null references raw_file (sha256),
    file_name   text not null,
    author_id   uuid not null,
    author      text not null,
    made_at     timestamp with time zone not null,
    document    text not null,
    sha256      text not null
);

create index bench_record_revision on bench_record (revision_id, made_at);
