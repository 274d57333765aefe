create table bank (
    id            uuid primary key,
    rail_id       uuid references rail (id),
    owner_id      uuid not null references person (id),
    owner         text not null,
    name          text not null,
    latest_number integer not null,
    version       bigint not null
);

create index bank_rail on bank (rail_id);
create index bank_owner on bank (owner_id);

create table bank_revision (
    id               uuid primary key,
    subject_id       uuid not null references bank (id),
    number           integer not null,
    author_id        uuid not null,
    author           text not null,
    made_at          timestamp with time zone not null,
    document         text not null,
    sha256           text not null,
    rail_revision_id uuid references rail_revision (id),
    unique (subject_id, number)
);

-- Where a revision stands on its way through review; the revision itself never changes.
create table bank_revision_state (
    revision_id uuid primary key references bank_revision (id),
    state       text not null,
    version     bigint not null
);

create table bank_part (
    revision_id      uuid not null references bank_revision (id),
    part_id          uuid not null references part (id),
    part_revision_id uuid not null references part_revision (id),
    primary key (revision_id, part_id, part_revision_id)
);

create index bank_part_part on bank_part (part_id);
