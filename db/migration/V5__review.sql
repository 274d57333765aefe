-- What was submitted, byte for byte as it was hashed; one for each submitted revision. No table of this file is ever updated.
create table review_snapshot (
    id             uuid primary key,
    revision_id    uuid not null unique references bank_revision (id),
    content        bytea not null,
    sha256         text not null,
    method_version integer not null,
    made_at        timestamp with time zone not null
);

-- What happened to a revision, in order: 1, 2, 3, ...
create table review_step (
    revision_id uuid not null references bank_revision (id),
    number      integer not null,
    step        text not null,
    person_id   uuid not null references person (id),
    person      text not null,
    taken_at    timestamp with time zone not null,
    remark      text,
    primary key (revision_id, number)
);

-- The signature names the bytes it was given for; its own hash covers every column before it.
create table review_signature (
    id              uuid primary key,
    snapshot_id     uuid not null references review_snapshot (id),
    snapshot_sha256 text not null,
    signer_id       uuid not null references person (id),
    signer          text not null,
    signed_at       timestamp with time zone not null,
    meaning         text not null,
    sha256          text not null,
    unique (snapshot_id, signer_id)
);

create table concession (
    revision_id uuid not null references bank_revision (id),
    requirement text not null,
    reason      text not null,
    owner_id    uuid not null references person (id),
    owner       text not null,
    ends_on     date not null,
    primary key (revision_id, requirement)
);

create index concession_owner on concession (owner_id, ends_on);

create table review_comment (
    id          uuid primary key,
    revision_id uuid not null references bank_revision (id),
    person_id   uuid not null references person (id),
    person      text not null,
    made_at     timestamp with time zone not null,
    remark      text not null
);

create index review_comment_revision on review_comment (revision_id, made_at);

-- What waits for whom is asked by state, over all banks.
create index bank_revision_state_state on bank_revision_state (state);
