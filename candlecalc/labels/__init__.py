"""Labels at true size: what goes on them, the papers they are printed on, and the PDF.

What a label and a paper are: `shapes`. Where they come from: `folder`. How they are drawn: `draw`.
"""
