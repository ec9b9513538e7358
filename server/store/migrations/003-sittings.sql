-- Sittings: who sat which form when, raw responses, scores of every scoring, ratings. Student codes only, never names.

CREATE TABLE sittings (
	id TEXT PRIMARY KEY NOT NULL,
	form_id TEXT NOT NULL,
	form_version INTEGER NOT NULL,
	group_id TEXT NOT NULL REFERENCES groups (id),
	sat_on TEXT NOT NULL,
	mode TEXT NOT NULL CHECK (mode IN ('paper', 'platform', 'hand')),
	simulated INTEGER NOT NULL CHECK (simulated IN (0, 1)),
	keep_until TEXT,
	created_at TEXT NOT NULL,
	UNIQUE (form_id, form_version, group_id, sat_on, mode),
	FOREIGN KEY (form_id, form_version) REFERENCES form_versions (form_id, version)
) STRICT;

CREATE INDEX sittings_by_group ON sittings (group_id, sat_on);

-- Each scoring follows the keys of a version of the sitting's form. The newest counts, the earlier ones are kept.
CREATE TABLE scorings (
	sitting_id TEXT NOT NULL REFERENCES sittings (id) ON DELETE CASCADE,
	number INTEGER NOT NULL CHECK (number >= 1),
	form_version INTEGER NOT NULL,
	why TEXT NOT NULL,
	at TEXT NOT NULL,
	PRIMARY KEY (sitting_id, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE sitting_students (
	id INTEGER PRIMARY KEY,
	sitting_id TEXT NOT NULL REFERENCES sittings (id) ON DELETE CASCADE,
	code TEXT NOT NULL,
	UNIQUE (sitting_id, code)
) STRICT;

CREATE INDEX sitting_students_by_code ON sitting_students (code);

-- part is 0 for an item by itself. came_as: a response (then response is JSON), points somebody else gave, or a mark.
CREATE TABLE responses (
	student INTEGER NOT NULL REFERENCES sitting_students (id) ON DELETE CASCADE,
	position INTEGER NOT NULL,
	part INTEGER NOT NULL,
	raw TEXT NOT NULL,
	came_as TEXT NOT NULL CHECK (came_as IN ('response', 'points', 'omitted', 'not-reached', 'invalid')),
	response TEXT,
	points REAL,
	PRIMARY KEY (student, position, part)
) STRICT, WITHOUT ROWID;

CREATE TABLE scores (
	student INTEGER NOT NULL,
	position INTEGER NOT NULL,
	part INTEGER NOT NULL,
	scoring INTEGER NOT NULL,
	state TEXT NOT NULL,
	points REAL NOT NULL,
	maximum REAL NOT NULL,
	reason TEXT,
	PRIMARY KEY (student, position, part, scoring),
	FOREIGN KEY (student, position, part) REFERENCES responses (student, position, part) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Points readers gave an explanation; "agreed" counts before "first".
CREATE TABLE ratings (
	student INTEGER NOT NULL,
	position INTEGER NOT NULL,
	part INTEGER NOT NULL,
	reader TEXT NOT NULL CHECK (reader IN ('first', 'second', 'agreed')),
	points INTEGER NOT NULL,
	at TEXT NOT NULL,
	PRIMARY KEY (student, position, part, reader),
	FOREIGN KEY (student, position, part) REFERENCES responses (student, position, part) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Where copies of this bank were written, so that a purge can reach them.
CREATE TABLE backups (
	file TEXT PRIMARY KEY NOT NULL,
	written_at TEXT NOT NULL
) STRICT;

-- What is done to sittings is recorded too, without any student code; SQLite widens a CHECK only by a new table.
CREATE TABLE happenings_with_sittings (
	id INTEGER PRIMARY KEY,
	subject TEXT NOT NULL CHECK (subject IN ('item', 'form', 'group', 'blueprint', 'sitting')),
	subject_id TEXT NOT NULL,
	version INTEGER,
	what TEXT NOT NULL,
	at TEXT NOT NULL,
	by TEXT
) STRICT;

INSERT INTO happenings_with_sittings SELECT id, subject, subject_id, version, what, at, by FROM happenings;

DROP TABLE happenings;

ALTER TABLE happenings_with_sittings RENAME TO happenings;

CREATE INDEX happenings_by_subject ON happenings (subject, subject_id, id);
