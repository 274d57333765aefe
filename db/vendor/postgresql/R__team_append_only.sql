-- The team's settings and stated reasons stay as they were made: PostgreSQL itself refuses to change or remove them.
do $$
declare
    kept text;
begin
    foreach kept in array array['team_settings_revision', 'part_exemption'] loop
        execute format('drop trigger if exists %I on %I', kept || '_append_only', kept);
        execute format(
            'create trigger %I before update or delete or truncate on %I for each statement execute function refuse_change()',
            kept || '_append_only', kept);
    end loop;
end
$$;
