-- How many reviewers have to sign a revision of the project's banks: 1 or 2.
alter table project add column signatures integer default 1 not null;

-- What a comment was said of, such as a verdict or a branch; null for the revision as a whole.
alter table review_comment add column about text;
