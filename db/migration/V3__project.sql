create table project (
    id         uuid primary key,
    name       text not null unique,
    purpose    text not null,
    created_by text not null,
    created_at timestamp with time zone not null,
    version    bigint not null
);

create table project_member (
    project_id uuid not null references project (id),
    person_id  uuid not null references person (id),
    primary key (project_id, person_id)
);

create table converter_preset (
    id         uuid primary key,
    name       text not null unique,
    document   text not null,
    created_by text not null,
    created_at timestamp with time zone not null
);

create table rail (
    id            uuid primary key,
    project_id    uuid not null references project (id),
    name          text not null,
    latest_number integer not null,
    version       bigint not null,
    unique (project_id, name)
);

create table rail_revision (
    id                uuid primary key,
    subject_id        uuid not null references rail (id),
    number            integer not null,
    author_id         uuid not null,
    author            text not null,
    made_at           timestamp with time zone not null,
    document          text not null,
    sha256            text not null,
    nominal_voltage_v double precision not null,
    nominal_current_a double precision not null,
    switching_hz      double precision not null,
    load_step_a       double precision,
    unique (subject_id, number)
);
