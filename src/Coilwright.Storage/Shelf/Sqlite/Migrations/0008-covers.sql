-- The picture on the cover of a piece's written pattern: the last one that was chosen, of the piece and not of a state of it. It goes when the piece does.
CREATE TABLE covers (
  piece TEXT NOT NULL PRIMARY KEY REFERENCES pieces (id) ON DELETE CASCADE,
  -- Another picture has another.
  id TEXT NOT NULL UNIQUE,
  media_type TEXT NOT NULL,
  bytes BLOB NOT NULL,
  -- Whether it is a still of the coil in space, and no photo.
  still INTEGER NOT NULL CHECK (still IN (0, 1))
) STRICT;

PRAGMA user_version = 8;
