"""Label: data sheets, hazards, texts and papers."""
