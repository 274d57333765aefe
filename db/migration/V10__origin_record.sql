-- Lines of the record of another installation that came along with a project. Read only: they are no part of this installation's
-- chain. A chain is named by the hash of its first line.
create table origin_audit_event (
    chain           text not null,
    sequence_number bigint not null,
    happened_at     timestamp with time zone not null,
    actor           text not null,
    action          text not null,
    subject_kind    text not null,
    subject_id      text not null,
    detail          text not null,
    previous_hash   text not null,
    hash            text not null,
    primary key (chain, sequence_number)
);

-- Every line that is here, with the chain that it stands in.
create view audit_line as
select chain, sequence_number, happened_at, actor, action, subject_kind, subject_id, detail, previous_hash, hash
from origin_audit_event
union all
select (select f.hash from audit_event f where f.sequence_number = 1),
    sequence_number, happened_at, actor, action, subject_kind, subject_id, detail, previous_hash, hash
from audit_event;
