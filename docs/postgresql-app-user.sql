-- Gives the running application a PostgreSQL user that cannot change or remove what must stay. Run it as the owner of the
-- schema after the first start (which migrates), and again after each upgrade. Make the user first:
--     create role stillrail_app login password '...';
grant usage on schema public to stillrail_app;
grant select, insert, update, delete on all tables in schema public to stillrail_app;
grant usage, select on all sequences in schema public to stillrail_app;

revoke update, delete, truncate on
    audit_event, origin_audit_event, review_snapshot, review_signature, review_step, review_comment, concession,
    part_revision, rail_revision, bank_revision, team_settings_revision, part_exemption, raw_file, sweep, fixture_sweep,
    finding_acceptance, bench_record
    from stillrail_app;
revoke insert, update, delete, truncate on flyway_schema_history from stillrail_app;
