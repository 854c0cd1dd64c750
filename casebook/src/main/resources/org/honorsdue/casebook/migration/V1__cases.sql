-- Plain types only, so that one folder serves SQLite and PostgreSQL. Instants are ISO 8601 in UTC.
create table case_file (
  id         varchar(36)  primary key,
  revision   integer      not null,
  title      varchar(400) not null,
  stage      varchar(20)  not null,
  changed_at varchar(40)  not null,
  removed    integer      not null
);

-- Every state the case ever had. Rows are added, never changed.
create table case_revision (
  case_id  varchar(36)  not null references case_file (id),
  revision integer      not null,
  made_at  varchar(40)  not null,
  made_by  varchar(200) not null,
  what     varchar(400) not null,
  title    varchar(400) not null,
  stage    varchar(20)  not null,
  casefile text         not null,
  notes    text         not null,
  primary key (case_id, revision)
);

create table case_attachment (
  id          varchar(36)  primary key,
  case_id     varchar(36)  not null references case_file (id),
  name        varchar(400) not null,
  media_type  varchar(100) not null,
  sha256      varchar(64)  not null,
  bytes       integer      not null,
  attached_at varchar(40)  not null,
  removed     integer      not null,
  content     ${blob}      not null
);

create table case_letter (
  id          varchar(36)  primary key,
  case_id     varchar(36)  not null references case_file (id),
  kind        varchar(60)  not null,
  made_at     varchar(40)  not null,
  sent_on     varchar(10),
  answered_on varchar(10),
  body        text         not null
);

create table case_examination (
  case_id         varchar(36)  not null references case_file (id),
  revision        integer      not null,
  as_of           varchar(10)  not null,
  made_at         varchar(40)  not null,
  program_version varchar(60)  not null,
  findings        text         not null,
  primary key (case_id, revision, as_of)
);

-- What a case can be found by, kept by the program beside the case.
create table case_term (
  case_id varchar(36)  not null references case_file (id),
  field   varchar(20)  not null,
  term    varchar(1000) not null
);

create index case_file_by_change on case_file (removed, changed_at);
create index case_term_by_case on case_term (case_id);
create index case_attachment_by_case on case_attachment (case_id);
create index case_letter_by_case on case_letter (case_id);
