-- What stands for the whole shop: its time zone.
CREATE TABLE about (
  key   TEXT PRIMARY KEY,
  value TEXT NOT NULL
) WITHOUT ROWID;

-- unit: as the readings were written and are told; they are held in SI. place: where in the rig, empty until known.
CREATE TABLE sensors (
  id    INTEGER PRIMARY KEY,
  name  TEXT NOT NULL UNIQUE,
  kind  TEXT NOT NULL,
  unit  TEXT NOT NULL,
  place TEXT NOT NULL DEFAULT ''
);

-- A day (UTC) of a sensor in one row: slot = sensor * 2^20 + days since 1970. first and last: seconds since 1970.
CREATE TABLE readings (
  slot  INTEGER PRIMARY KEY,
  first INTEGER NOT NULL,
  last  INTEGER NOT NULL,
  count INTEGER NOT NULL,
  body  BLOB    NOT NULL
);

-- mass: kg as fired. moisture: of wet mass, 0 to 1, null where not measured.
CREATE TABLE loads (
  id       INTEGER PRIMARY KEY,
  time     INTEGER NOT NULL,
  mass     REAL    NOT NULL,
  moisture REAL,
  wood     TEXT    NOT NULL DEFAULT '',
  note     TEXT    NOT NULL DEFAULT ''
);
CREATE INDEX loads_by_time ON loads (time);

CREATE TABLE events (
  id   INTEGER PRIMARY KEY,
  time INTEGER NOT NULL,
  kind TEXT    NOT NULL,
  note TEXT    NOT NULL DEFAULT ''
);
CREATE INDEX events_by_time ON events (time);

-- since: from when the rig was so.
CREATE TABLE rigs (
  id    INTEGER PRIMARY KEY,
  since INTEGER NOT NULL,
  name  TEXT    NOT NULL,
  text  TEXT    NOT NULL
);

CREATE TABLE fits (
  id   INTEGER PRIMARY KEY,
  made INTEGER NOT NULL,
  rig  INTEGER REFERENCES rigs (id),
  body TEXT    NOT NULL
);
