-- A notification sent inside a transaction takes one lock for the whole server until that transaction is on disk, so commits that
-- write events wait for each other: 290 to 430 a second instead of 1,800 to 2,300 (32 writers, 10 connections, measured).
-- The service tells after the commit instead, once for all commits of some milliseconds, and looks by itself every second
-- (apps/api/src/platform/live/live-events.ts); nothing is lost, since the event is in the table.
DROP TRIGGER outbox_event_tell ON outbox_event;
DROP FUNCTION tell_outbox_event();
