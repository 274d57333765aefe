create table part (
    id              uuid primary key,
    part_number     text not null unique,
    maker           text not null,
    vetting         text not null,
    vetting_reason  text,
    latest_number   integer not null,
    version         bigint not null
);

create table part_revision (
    id               uuid primary key,
    subject_id       uuid not null references part (id),
    number           integer not null,
    author_id        uuid not null,
    author           text not null,
    made_at          timestamp with time zone not null,
    document         text not null,
    sha256           text not null,
    technology       text not null,
    capacitance_f    double precision not null,
    rated_voltage_v  double precision not null,
    unique (subject_id, number)
);

create table raw_file (
    sha256     text primary key,
    size_bytes bigint not null,
    content    bytea not null
);

create table sweep (
    id           uuid primary key,
    part_id      uuid not null references part (id),
    raw_sha256   text not null references raw_file (sha256),
    file_name    text not null,
    importer_id  uuid not null,
    importer     text not null,
    imported_at  timestamp with time zone not null,
    document     text not null,
    sha256       text not null,
    points       integer not null,
    start_hz     double precision not null,
    stop_hz      double precision not null
);

create index sweep_part on sweep (part_id, imported_at);
create index sweep_raw on sweep (raw_sha256);
create index part_revision_search on part_revision (technology, capacitance_f, rated_voltage_v);
