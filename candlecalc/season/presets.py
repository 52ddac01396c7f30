"""What a region's makers start from: currency, units, paper and the usual way with tax. All can be changed."""

import datetime

from candlecalc.season.fields import Value

# US prices are stated before sales tax; British and European shelf prices hold VAT.
REGIONS: dict[str, dict[str, Value]] = {
    "us": {
        "region": "us", "currency": "USD", "paper": "Letter",
        "weight_unit": "oz", "temperature_unit": "F", "length_unit": "in", "shelf_prices": "before tax",
    },
    "gb": {
        "region": "gb", "currency": "GBP", "paper": "A4",
        "weight_unit": "g", "temperature_unit": "C", "length_unit": "mm", "shelf_prices": "with tax",
    },
    "eu": {
        "region": "eu", "currency": "EUR", "paper": "A4",
        "weight_unit": "g", "temperature_unit": "C", "length_unit": "mm", "shelf_prices": "with tax",
    },
}  # fmt: skip


def blank_settings(region: str, first_day: datetime.date) -> dict[str, Value]:
    """Settings of a new workbook: what a region fixes, and a starting point for what a maker must type."""
    ounces = REGIONS[region]["weight_unit"] == "oz"
    return {
        **REGIONS[region],
        "maker": None,
        "place": None,
        "season": f"Season from {first_day.isoformat()}",
        "first_day": first_day,
        "last_day": first_day + datetime.timedelta(days=181),
        "registered": "no",
        "tax_rate": 0.0,
        "paid_rate": 0.0,
        "own_rate": 0.0,
        "production_overhead": 0.0,
        "running_costs": 0.0,
        "season_hours": 100.0,
        "waste": 0.0,
        "price_step": 1.0,
        "price_ending": 0.0,
        "scale_step": 0.1 if ounces else 1.0,
        "largest_pot": 64.0 if ounces else 2000.0,
        "materials_rise": 0.1,
        "records": "no",
    }
