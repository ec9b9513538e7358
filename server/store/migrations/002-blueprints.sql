-- Blueprints as immutable versioned documents.

CREATE TABLE blueprints (
	id TEXT PRIMARY KEY NOT NULL,
	newest_version INTEGER NOT NULL,
	title TEXT NOT NULL,
	created_at TEXT NOT NULL
) STRICT;

CREATE TABLE blueprint_versions (
	blueprint_id TEXT NOT NULL REFERENCES blueprints (id),
	version INTEGER NOT NULL CHECK (version >= 1),
	document TEXT NOT NULL,
	created_at TEXT NOT NULL,
	created_by TEXT,
	PRIMARY KEY (blueprint_id, version)
) STRICT;

CREATE TRIGGER blueprint_versions_never_change
BEFORE UPDATE ON blueprint_versions
BEGIN
	SELECT RAISE(ABORT, 'a version of a blueprint never changes');
END;

CREATE TRIGGER blueprint_versions_never_go
BEFORE DELETE ON blueprint_versions
BEGIN
	SELECT RAISE(ABORT, 'a version of a blueprint is never deleted');
END;

-- What is done to blueprints is recorded too; SQLite widens a CHECK only by a new table.
CREATE TABLE happenings_with_blueprints (
	id INTEGER PRIMARY KEY,
	subject TEXT NOT NULL CHECK (subject IN ('item', 'form', 'group', 'blueprint')),
	subject_id TEXT NOT NULL,
	version INTEGER,
	what TEXT NOT NULL,
	at TEXT NOT NULL,
	by TEXT
) STRICT;

INSERT INTO happenings_with_blueprints SELECT id, subject, subject_id, version, what, at, by FROM happenings;

DROP TABLE happenings;

ALTER TABLE happenings_with_blueprints RENAME TO happenings;

CREATE INDEX happenings_by_subject ON happenings (subject, subject_id, id);
