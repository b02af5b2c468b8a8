"""The lists under the panel: snags and their cards, chances, what must be held."""
