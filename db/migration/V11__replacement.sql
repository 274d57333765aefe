-- What takes the place of a withdrawn part.
alter table part add column replacement_id uuid references part (id);
