"""Behind the numbers: what no one types and few read."""
