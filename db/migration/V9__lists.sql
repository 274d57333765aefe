-- What waits for a person is looked up from the person.
create index bank_revision_author on bank_revision (author_id);
create index review_step_person on review_step (person_id, step);
