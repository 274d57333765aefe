-- What the team sets for all its work, as revisions of one document.
create table team_settings_revision (
    id         uuid primary key,
    subject_id uuid not null,
    number     integer not null,
    author_id  uuid not null references person (id),
    author     text not null,
    made_at    timestamp with time zone not null,
    document   text not null,
    sha256     text not null,
    unique (subject_id, number)
);

-- Why a part may be vetted without something that the team's list asks for; never updated, the newest counts.
create table part_exemption (
    id        uuid primary key,
    part_id   uuid not null references part (id),
    item      text not null,
    reason    text not null,
    author_id uuid not null references person (id),
    author    text not null,
    made_at   timestamp with time zone not null
);

create index part_exemption_part on part_exemption (part_id, made_at);

-- When the vetting last changed; a bank saved before a withdrawal rests on changed evidence, one saved after it knew.
alter table part add column vetting_changed_at timestamp with time zone;
