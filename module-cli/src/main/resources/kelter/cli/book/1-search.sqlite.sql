create virtual table entry_text using fts5 (
  complaint, notes, maker, model, serial,
  content = 'entry', content_rowid = 'number', tokenize = 'unicode61 remove_diacritics 2'
);

create trigger entry_is_searched after insert on entry begin
  insert into entry_text (rowid, complaint, notes, maker, model, serial)
  values (new.number, new.complaint, new.notes, new.maker, new.model, new.serial);
end;
