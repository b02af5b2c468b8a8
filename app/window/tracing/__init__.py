"""A photo or scan behind the drawing: laid there to scale, and traced."""
