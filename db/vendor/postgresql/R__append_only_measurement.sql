-- What was measured and accepted stays: PostgreSQL itself refuses to change or remove it.
do $$
declare
    kept text;
begin
    foreach kept in array array['finding_acceptance', 'fixture_sweep', 'bench_record'] loop
        execute format('drop trigger if exists %I on %I', kept || '_append_only', kept);
        execute format(
            'create trigger %I before update or delete or truncate on %I for each statement execute function refuse_change()',
            kept || '_append_only', kept);
    end loop;
end
$$;
