alter table entry add column words tsvector generated always as (
  to_tsvector(
    'simple',
    regexp_replace(
      complaint || ' ' || notes || ' ' || maker || ' ' || model || ' ' || serial,
      '[\x21-\x2f\x3a-\x40\x5b-\x60\x7b-\x7e]+',
      ' ',
      'g'
    )
  )
) stored;

create index entry_by_word on entry using gin (words);
