-- A state is added, never changed; but what one person types into one entry within two minutes is one state.
-- How the display case is wished for: part of every state, so that it is undone and handed over like the rest.
alter table case_revision add column display text not null default '';
