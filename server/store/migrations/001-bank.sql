-- The bank: items and forms as immutable versioned documents, class groups, and what was done when.

CREATE TABLE items (
	id TEXT PRIMARY KEY NOT NULL,
	newest_version INTEGER NOT NULL,
	approved_version INTEGER,
	created_at TEXT NOT NULL
) STRICT;

CREATE TABLE item_versions (
	item_id TEXT NOT NULL REFERENCES items (id),
	version INTEGER NOT NULL CHECK (version >= 1),
	status TEXT NOT NULL CHECK (status IN ('draft', 'approved', 'retired')),
	document TEXT NOT NULL,
	created_at TEXT NOT NULL,
	created_by TEXT,
	PRIMARY KEY (item_id, version)
) STRICT;

CREATE TRIGGER item_versions_never_change
BEFORE UPDATE OF item_id, version, document, created_at, created_by ON item_versions
BEGIN
	SELECT RAISE(ABORT, 'a version of an item never changes');
END;

CREATE TRIGGER item_versions_never_go
BEFORE DELETE ON item_versions
BEGIN
	SELECT RAISE(ABORT, 'a version of an item is never deleted');
END;

-- One row per combination of extracted values in use. '' where an item has no context. Rows are only ever added.
CREATE TABLE traits (
	id INTEGER PRIMARY KEY,
	given TEXT NOT NULL,
	kind TEXT NOT NULL,
	dok INTEGER NOT NULL,
	points INTEGER NOT NULL,
	setting TEXT NOT NULL,
	role TEXT NOT NULL,
	status TEXT NOT NULL,
	UNIQUE (given, kind, dok, points, setting, role, status)
) STRICT;

-- One row per standard in use; code in its normal spelling. Rows are only ever added.
CREATE TABLE standards (
	id INTEGER PRIMARY KEY,
	framework TEXT NOT NULL,
	edition TEXT NOT NULL,
	code TEXT NOT NULL,
	UNIQUE (framework, edition, code)
) STRICT;

-- The versions a search can find: of each item the newest, and beside a newer draft the approved one.
CREATE TABLE standing_versions (
	id INTEGER PRIMARY KEY,
	item_id TEXT NOT NULL,
	version INTEGER NOT NULL,
	traits INTEGER NOT NULL REFERENCES traits (id),
	name TEXT NOT NULL,
	changed_at TEXT NOT NULL,
	UNIQUE (item_id, version),
	FOREIGN KEY (item_id, version) REFERENCES item_versions (item_id, version)
) STRICT;

CREATE INDEX standing_versions_by_traits ON standing_versions (traits, id);
CREATE INDEX standing_versions_by_name ON standing_versions (name, id);
CREATE INDEX standing_versions_by_change ON standing_versions (changed_at, id);

-- Alignments of the standing versions. lead is 1 for the one alignment that counts the item within a framework and edition.
CREATE TABLE alignments (
	standing INTEGER NOT NULL REFERENCES standing_versions (id) ON DELETE CASCADE,
	standard INTEGER NOT NULL REFERENCES standards (id),
	lead INTEGER NOT NULL CHECK (lead IN (0, 1)),
	is_primary INTEGER NOT NULL CHECK (is_primary IN (0, 1)),
	grade TEXT NOT NULL,
	extent TEXT NOT NULL,
	traits INTEGER NOT NULL REFERENCES traits (id),
	PRIMARY KEY (standing, standard)
) STRICT, WITHOUT ROWID;

CREATE INDEX alignments_by_standard ON alignments (standard, lead, traits, standing);

-- Words of the standing versions, by their id.
CREATE VIRTUAL TABLE words USING fts5 (name, body, tags, codes, content = '', contentless_delete = 1);

CREATE TABLE forms (
	id TEXT PRIMARY KEY NOT NULL,
	newest_version INTEGER NOT NULL,
	title TEXT NOT NULL,
	created_at TEXT NOT NULL
) STRICT;

CREATE TABLE form_versions (
	form_id TEXT NOT NULL REFERENCES forms (id),
	version INTEGER NOT NULL CHECK (version >= 1),
	document TEXT NOT NULL,
	created_at TEXT NOT NULL,
	created_by TEXT,
	PRIMARY KEY (form_id, version)
) STRICT;

CREATE TRIGGER form_versions_never_change
BEFORE UPDATE ON form_versions
BEGIN
	SELECT RAISE(ABORT, 'a version of a form never changes');
END;

CREATE TRIGGER form_versions_never_go
BEFORE DELETE ON form_versions
BEGIN
	SELECT RAISE(ABORT, 'a version of a form is never deleted');
END;

CREATE TABLE form_items (
	form_id TEXT NOT NULL,
	form_version INTEGER NOT NULL,
	position INTEGER NOT NULL,
	item_id TEXT NOT NULL,
	item_version INTEGER NOT NULL,
	PRIMARY KEY (form_id, form_version, position),
	FOREIGN KEY (form_id, form_version) REFERENCES form_versions (form_id, version),
	FOREIGN KEY (item_id, item_version) REFERENCES item_versions (item_id, version)
) STRICT, WITHOUT ROWID;

CREATE INDEX form_items_by_item ON form_items (item_id, item_version);

CREATE TABLE groups (
	id TEXT PRIMARY KEY NOT NULL,
	name TEXT NOT NULL UNIQUE,
	grade TEXT,
	created_at TEXT NOT NULL
) STRICT;

CREATE TABLE group_students (
	group_id TEXT NOT NULL REFERENCES groups (id),
	position INTEGER NOT NULL,
	code TEXT NOT NULL,
	PRIMARY KEY (group_id, position),
	UNIQUE (group_id, code)
) STRICT, WITHOUT ROWID;

CREATE TABLE givings (
	form_id TEXT NOT NULL,
	form_version INTEGER NOT NULL,
	group_id TEXT NOT NULL REFERENCES groups (id),
	given_on TEXT NOT NULL,
	PRIMARY KEY (form_id, form_version, group_id, given_on),
	FOREIGN KEY (form_id, form_version) REFERENCES form_versions (form_id, version)
) STRICT, WITHOUT ROWID;

-- What was done when; who stays empty until there are accounts.
CREATE TABLE happenings (
	id INTEGER PRIMARY KEY,
	subject TEXT NOT NULL CHECK (subject IN ('item', 'form', 'group')),
	subject_id TEXT NOT NULL,
	version INTEGER,
	what TEXT NOT NULL,
	at TEXT NOT NULL,
	by TEXT
) STRICT;

CREATE INDEX happenings_by_subject ON happenings (subject, subject_id, id);
