"""Tables, migrations and the transactions on them."""
