"""What panels are made of: forms of rows, fields, tables to type into, lists, lines of words."""
