"""Dialogs that ask for a number or tell something."""
