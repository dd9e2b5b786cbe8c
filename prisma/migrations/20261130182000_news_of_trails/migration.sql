-- Whoever listens to "trail_news" hears of every entry as it is committed: the trail's id and the entry's number.
CREATE FUNCTION tell_trail_news() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('trail_news', NEW."id" || ' ' || NEW."seq");
  RETURN NULL;
END $$;
CREATE TRIGGER trail_tells_news AFTER UPDATE OF "seq" ON "Trail"
  FOR EACH ROW WHEN (NEW."seq" > OLD."seq") EXECUTE FUNCTION tell_trail_news();
