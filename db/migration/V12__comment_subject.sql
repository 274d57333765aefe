-- What a comment is tied to: a verdict by its requirement, or a branch by its place in the revision's document, from 0; both null for
-- the revision as a whole. "about" keeps it in words, which is all that older comments have.
alter table review_comment add column requirement text;
alter table review_comment add column branch integer;
