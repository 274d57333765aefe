-- What a line of the record is about, worked out by the database from what the line says, so that a project's record is looked up and
-- not searched. A refused request is about the id in its path; anything else about its subject, cut as an index takes no long keys.
-- The same stands in db/vendor/postgresql, whose words for it differ.
alter table audit_event add column about text generated always as (case
    when subject_kind <> 'request' then substring(subject_id from 1 for 200)
    when subject_id like '/banks/%' or subject_id like '/rails/%' then substring(subject_id from 8 for 36)
    when subject_id like '/projects/%' then substring(subject_id from 11 for 36)
    when subject_id like '/library/parts/%' then substring(subject_id from 16 for 36)
    when subject_id like '/library/sweeps/%' then substring(subject_id from 17 for 36)
    end);
alter table origin_audit_event add column about text generated always as (case
    when subject_kind <> 'request' then substring(subject_id from 1 for 200)
    when subject_id like '/banks/%' or subject_id like '/rails/%' then substring(subject_id from 8 for 36)
    when subject_id like '/projects/%' then substring(subject_id from 11 for 36)
    when subject_id like '/library/parts/%' then substring(subject_id from 16 for 36)
    when subject_id like '/library/sweeps/%' then substring(subject_id from 17 for 36)
    end);
create index audit_event_about on audit_event (about, sequence_number);
create index origin_audit_event_about on origin_audit_event (about, chain, sequence_number);

create view audit_subject as
select chain, sequence_number, about from origin_audit_event
union all
select (select f.hash from audit_event f where f.sequence_number = 1), sequence_number, about from audit_event;
