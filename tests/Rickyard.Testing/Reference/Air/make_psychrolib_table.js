// Makes psychrolib.csv: npm install psychrolib@1.1.1, then node make_psychrolib_table.js > psychrolib.csv
// Wet bulbs of air hotter than the boiling point are left out: the package returns the dry bulb there.
// In psychrolib relative humidity and dew point are over ice below 0 °C.
const air = require('psychrolib');
air.SetUnitSystem(air.SI);

const temperatures = [-40, -30, -20, -10, -5, -1, 1, 5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100, 110];
const humidities = [0.05, 0.2, 0.4, 0.6, 0.8, 0.95, 1];
const elevations = [0, 1500, 4000];

console.log('# Computed with the npm package psychrolib 1.1.1 (MIT; ASHRAE Handbook Fundamentals 2017, ch. 1) by make_psychrolib_table.js.');
console.log('# Relative humidity and dew point are over ice below 0 °C. The package finds wet bulb and dew point within 0.001 °C.');
console.log('# Wet bulb is empty above the boiling point, where the package cannot find it.');
console.log('elevation_m,pressure_pa,temp_c,rh,vapor_pressure_pa,humidity_ratio,dew_point_c,wet_bulb_c,enthalpy_j_kg,volume_m3_kg,density_kg_m3');
for (const z of elevations) {
  const p = air.GetStandardAtmPressure(z);
  for (const t of temperatures) {
    for (const rh of humidities) {
      const pv = air.GetVapPresFromRelHum(t, rh);
      if (pv >= 0.98 * p) continue;
      const w = air.GetHumRatioFromVapPres(pv, p);
      const wetBulb = air.GetSatVapPres(t) < p ? air.GetTWetBulbFromHumRatio(t, w, p).toFixed(4) : '';
      const row = [
        z, p.toPrecision(12), t, rh, pv.toPrecision(12), w.toPrecision(9), air.GetTDewPointFromVapPres(t, pv).toFixed(4), wetBulb,
        air.GetMoistAirEnthalpy(t, w).toPrecision(9), air.GetMoistAirVolume(t, w, p).toPrecision(9), air.GetMoistAirDensity(t, w, p).toPrecision(9),
      ];
      console.log(row.join(','));
    }
  }
}
