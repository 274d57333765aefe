-- The audit trail, and what came along of another one, only grows: PostgreSQL itself refuses to change or remove a line.
create or replace function refuse_change() returns trigger language plpgsql as $$
begin
    raise exception 'Table % is append-only: % is refused', tg_table_name, lower(tg_op);
end
$$;

drop trigger if exists audit_event_append_only on audit_event;
create trigger audit_event_append_only
    before update or delete or truncate on audit_event
    for each statement execute function refuse_change();

drop trigger if exists origin_audit_event_append_only on origin_audit_event;
create trigger origin_audit_event_append_only
    before update or delete or truncate on origin_audit_event
    for each statement execute function refuse_change();
