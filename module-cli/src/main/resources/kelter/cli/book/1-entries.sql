create table entry (
  number integer primary key,
  job text not null unique,
  digest text not null,
  called text,
  closed text not null,
  kind text not null,
  maker text not null,
  model text not null,
  serial text not null,
  age double precision,
  cycles double precision,
  hours double precision,
  market text,
  complaint text not null,
  notes text not null,
  outcome text not null,
  charged text,
  call_back_of text
);

create index entry_by_day on entry (closed, number);

create index entry_by_kind on entry (kind, closed);

create index entry_by_call_back on entry (call_back_of);

create table symptom (
  entry integer not null references entry (number) on delete cascade,
  place integer not null,
  symptom text not null,
  answer text not null,
  primary key (entry, place)
) [clustered];

create table displayed (
  entry integer not null references entry (number) on delete cascade,
  place integer not null,
  meaning text not null,
  primary key (entry, place)
) [clustered];

create table cause (
  entry integer not null references entry (number) on delete cascade,
  place integer not null,
  component text not null,
  kind text not null,
  fault text not null,
  primary key (entry, place)
) [clustered];

create table work (
  entry integer not null references entry (number) on delete cascade,
  place integer not null,
  component text not null,
  remedy text not null,
  minutes double precision,
  parts text,
  cured integer,
  primary key (entry, place)
) [clustered];

create table reading (
  entry integer not null references entry (number) on delete cascade,
  place integer not null,
  component text not null,
  observable text not null,
  instrument text not null,
  minutes double precision,
  misled integer not null,
  primary key (entry, place)
) [clustered];

create table prediction (
  entry integer not null references entry (number) on delete cascade,
  place integer not null,
  fault text not null,
  probability double precision not null,
  primary key (entry, place)
) [clustered];

create table writer (
  one integer primary key
);

insert into writer (one) values (1);
