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
