-- The picture on the cover of a piece's written pattern: the last one that was chosen, of the piece and not of a state of it. It goes when the piece does.
CREATE TABLE coilwright.covers (
  piece uuid NOT NULL PRIMARY KEY REFERENCES coilwright.pieces (id) ON DELETE CASCADE,
  -- Another picture has another.
  id uuid NOT NULL UNIQUE,
  media_type text NOT NULL,
  bytes bytea NOT NULL,
  -- Whether it is a still of the coil in space, and no photo.
  still boolean NOT NULL
);
