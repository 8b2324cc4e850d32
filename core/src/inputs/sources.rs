//! Citations by key, and how much of each was read.

use serde::Serialize;

/// How much of a source was read before its figures were used here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Read {
    /// Its abstract or opening pages.
    Abstract,
    /// Another text that quotes it.
    SecondHand,
    /// Remembered, not looked up again; figures from it are never shown as published.
    FromMemory,
}

/// A citation.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Source {
    /// The key used in code, tables and on the page.
    pub key: &'static str,
    /// The full reference.
    pub citation: &'static str,
    /// How much of it was read.
    pub read: Read,
    /// What was taken from it; the page shows that where it uses it.
    #[serde(skip)]
    #[cfg_attr(feature = "types", ts(skip))]
    pub figure: &'static str,
}

macro_rules! sources {
    ($($key:literal, $read:ident, $citation:literal, $figure:literal;)*) => {
        /// Every source, in alphabetical order of keys.
        pub static SOURCES: &[Source] = &[$(Source { key: $key, citation: $citation, read: Read::$read, figure: $figure }),*];
    };
}

sources! {
    "bartram-2018", Abstract, "Bartram JC et al. Int J Sports Physiol Perform 2018;13:724–728 (title not in the record read).",
        "Recovery of W′ in four elite riders: a time constant of 2287.2 D^(−0.688) s.";
    "bassett-1999", Abstract, "Bassett DR, Kyle CR, Passfield L, Broker JP, Burke ER. Comparing cycling world hour records, 1967–1996: modeling with empirical data. Med Sci Sports Exerc 1999;31(11):1665–1676.",
        "Air about 20 % thinner at 2300 m.";
    "beaumont-2018", Abstract, "Beaumont F, Taiar R, Polidori G, Trenchard H, Grappe F. Aerodynamic study of time-trial helmets in cycling racing using CFD analysis. J Biomech 2018;67:1–8.",
        "Up to 6.4 % of drag between two head positions; less than 1.5 % between helmet shapes with the head kept still (15 m/s, computed flow).";
    "bini-2011", Abstract, "Bini R, Hume PA, Croft JL. Effects of bicycle saddle height on knee injury risk and cycling performance. Sports Med 2011;41(6):463–476.",
        "A knee 25 to 30° short of straight at the bottom is advised; evidence on injury is limited.";
    "brownlie-2009", Abstract, "Brownlie L et al. Streamlining the time trial apparel of cyclists. Sports Technol 2009;2(1–2):53–60.",
        "A suit that cuts drag by 3.9 % saves about 44 s over 55 km.";
    "clark-2007", Abstract, "Clark SA, Bourdon PC, Schmidt W, Singh B, Cable G, Onus KJ, Woolford SM, Stanef T, Gore CJ, Aughey RJ. The effect of acute simulated moderate altitude on power, performance and pacing strategies in well-trained cyclists. Eur J Appl Physiol 2007;102(1):45–55.",
        "Ten cyclists not used to altitude: five-minute power 5.8 ± 2.9, 10.3 ± 4.3 and 19.8 ± 3.5 % lower at 1200, 2200 and 3200 m than at 200 m.";
    "clark-2018", Abstract, "Effects of two hours of heavy-intensity exercise on the power–duration relationship. Med Sci Sports Exerc 2018 (authors from memory: Clark IE et al.).",
        "Two hours of heavy riding took 8 % of CP and 20 % of W′.";
    "crosswinds-2021", Abstract, "Cycling speeds in crosswinds. Phys Rev Fluids 2021;6(12):124601.",
        "The usual expression for air power holds only for pure head or tail wind.";
    "debraux-2011", Abstract, "Debraux P, Grappe F, Manolova AV, Bertucci W. Aerodynamic drag in cycling: methods of assessment. Sports Biomech 2011;10(3):197–218.",
        "Above 14 m/s on the level about 90 % of the power goes into the air.";
    "drake-2024", Abstract, "Drake JP, Finke A, Ferguson RA. Eur J Appl Physiol 2024;124(2):507–526 (title not in the record read).",
        "A power law describes efforts under 2 and over 15 minutes better than the hyperbola.";
    "drillis-1966", FromMemory, "Drillis R, Contini R. Body segment parameters. New York University, 1966, as in Winter DA. Biomechanics and Motor Control of Human Movement.",
        "Lengths of body segments as shares of the stature; the attribution was read, the shares are from memory.";
    "dynamic-parameter", Abstract, "Accounting for dynamic changes in the power–duration relationship improves the accuracy of W′ balance modeling (authors and journal not in the record read).",
        "W′ 16.9 ± 3.2 kJ, CP 282 ± 44 W in twelve sets of three-minute tests; in a second test a minute later the end power was 7 % lower.";
    "faulkner-2021", Abstract, "Faulkner SH, Jobling P. The effect of upper-body positioning on the aerodynamic–physiological economy of time-trial cycling. Int J Sports Physiol Perform 2021;16(1):51–58.",
        "Power at the anaerobic threshold −16 ± 20 W at a torso angle of 12° in eleven riders; the low position won all the same.";
    "fintelman-2015", Abstract, "Fintelman DM, Sterling M, Hemida H, Li F-X. The effect of time trial cycling position on physiological and aerodynamic variables. J Sports Sci 2015;33(16):1730–1737.",
        "Nineteen trained men: all maximal variables fell with a lower torso, 0° being unlike every other position.";
    "four-and-twenty", Abstract, "Abstract on the reliability of 4- and 20-minute trials in eight trained cyclists (from memory: MacInnis MJ et al., Int J Sports Physiol Perform 2019).",
        "4 min 417 W, 20 min 342 W, 60 min 309 W; CP 323 W. The 20-minute trial repeats to 1.3 %, the 4-minute trial and CP to 2.0 %.";
    "gaesser-1995", Abstract, "Gaesser GA et al. Med Sci Sports Exerc 1995;27:1430–1438 (title not in the record read).",
        "The forms of the relation; five of them gave sixteen men a mean CP of 195 to 242 W from the same trials.";
    "hurd-2023", Abstract, "Hurd KA, Surges MP, Farrell JW. Systematic review of critical-power training. J Strength Cond Res 2023;37(3):733–744 (title not in the record read).",
        "Training raised critical power in both cycling studies reviewed; W′ usually did not rise.";
    "iso-2533", SecondHand, "ISO 2533:1975 Standard Atmosphere; U.S. Standard Atmosphere 1976.",
        "Temperature, pressure and density by altitude.";
    "jeukendrup-2001", Abstract, "Jeukendrup AE, Martin J. Improving cycling performance: how should we spend our time and money. Sports Med 2001;31(7):559–569.",
        "Modelled 40-km times of novices to elites: aerodynamic frame −1:17 to −1:44, wheels −60 to −82 s, a better position −2 to −2.5 min.";
    "kordi-2019", Abstract, "Kordi M, Fullerton C, Passfield L, Parker Simpson L. Influence of upright versus time trial cycling position on determination of critical power and W′ in trained cyclists. Eur J Sport Sci 2019;19(2):192–198.",
        "Seven trained riders: CP lower in the time-trial position, W′ not different.";
    "laursen-2002", Abstract, "Laursen PB et al. Med Sci Sports Exerc 2002;34(11):1801–1807 (title not in the record read).",
        "Highly trained cyclists, four weeks of intervals: 40-km trial 4.4 to 5.8 % better, peak aerobic power 3.0 to 6.2 % higher.";
    "maier-2017", Abstract, "Maier T, Schmid L, Müller B, Steiner T, Wehrlin JP. Accuracy of cycling power meters against a mathematical model of treadmill cycling. Int J Sports Med 2017 (authors and title from memory).",
        "54 power meters of 9 makers deviated by −0.9 ± 3.2 %; each repeated itself to 1.2 ± 0.9 %.";
    "martin-1998", FromMemory, "Martin JC, Milliken DL, Cobb JE, McFadden KL, Coggan AR. Validation of a mathematical model for road cycling power. J Appl Biomech 1998;14(3):276–291.",
        "The power balance on the road; its validation (R² 0.97, standard error 2.7 W) was read, its constants are from memory.";
    "martin-2007", Abstract, "Martin JC, Davidson CJ, Pardyjak ER. Understanding sprint-cycling performance: the integration of muscle power, resistance, and modeling. Int J Sports Physiol Perform 2007;2:5–21.",
        "Crank length is no factor in power from 165 to 180 mm.";
    "monod-1965", SecondHand, "Monod H, Scherrer J. Ergonomics 1965;8:329–338 (title not in the record read).",
        "Critical power.";
    "morton-1996", Abstract, "Morton RH. Ergonomics 1996;39:611–619 (title not in the record read).",
        "A peak power; CP comes out lower and W′ higher than with two parameters.";
    "padilla-2000", Abstract, "Padilla S, Mujika I, Angulo F, Goiriena JJ. Scientific approach to the 1-h cycling world record: a case study. J Appl Physiol 2000;89:1522–1527.",
        "CdA 0.244 m² in a tunnel, at an estimated 509.5 W.";
    "peronnet-1987", Abstract, "Péronnet F, Thibault G 1987 (abstract; journal not in the record read).",
        "Power declines with the logarithm of time past seven minutes.";
    "peveler-2005", Abstract, "Peveler W, Bishop P, Smith J, Richardson M. Effects of training in an aero position on metabolic economy. J Exerc Physiol online 2005;8(1):44–50.",
        "Riders trained upright used 5.1 % more oxygen in the aero position; riders trained in it 1.3 %, not significant.";
    "picard-2008", SecondHand, "Picard A, Davis RS, Gläser M, Fujii K. Revised formula for the density of moist air (CIPM-2007). Metrologia 2008;45:149–155.",
        "Density of moist air.";
    "polanco-2020", Abstract, "Polanco AP, Muñoz LE, Doria A, Suarez DR. Selection of posture for time-trial cycling events. Appl Sci 2020;10(18):6546.",
        "Lower bars: CdA −10.7 ± 3.1 %, power −9.5 ± 5.4 %, five riders.";
    "puchowicz-2020", FromMemory, "Puchowicz MJ, Baker J, Clarke DC. Development and field validation of an omni-domain power-duration model. J Sports Sci 2020;38(7):801–813.",
        "The power–duration relation for seconds to hours.";
    "romcke-2019", Abstract, "Rømcke E et al. Simulation model for road cycling time trials with a non-constant drag area. Proc. icSPORTS 2019.",
        "Models missed real finish times by 3.87 % on average, 3.22 % with a CdA that changes with speed.";
    "saddle-economy-2013", Abstract, "Preferred versus recommended saddle height for optimal cycling economy. Thesis record, Arizona State University, 2013.",
        "A knee set 25° short of straight at rest was 29.0 ± 4.6° short when pedalling.";
    "skiba-2012", FromMemory, "Skiba PF et al. Med Sci Sports Exerc 2012;44(8):1526–1532.",
        "W′ balance in integral form, and the time constant of its recovery.";
    "skiba-2015", Abstract, "Skiba PF et al. Eur J Appl Physiol 2015;115(4):703–713 (title not in the record read).",
        "W′ balance in differential form; it exists and follows measured recovery, its equation is from memory.";
    "smit-2023", Abstract, "Smit A, van der Zwaard S, Janssen I, Janssen TWJ. Power loss of the chain drive in a race tandem bicycle. Sports Eng 2023.",
        "A solo chain drive loses 2.1 ± 1.5 % at 100 to 400 W.";
    "townsend-2017", Abstract, "Townsend NE, Nichols DS, Skiba PF, Racinais S, Périard JD. Prediction of critical power and W′ in hypoxia: application to work-balance modelling. Front Physiol 2017;8:180.",
        "Nine cyclists at 250 to 4250 m: CP fell with altitude, W′ at 4250 m only; its equations were not read.";
    "underwood-2013", Abstract, "Underwood L, Jermy M. Optimal handlebar position for track cyclists. Sports Eng 2013;16(2):81–90.",
        "Seven men and seven women in a tunnel: bar height matters more than elbow width, and the best varies between riders.";
    "wgs-84", SecondHand, "NIMA TR8350.2 World Geodetic System 1984; Moritz H. Geodetic Reference System 1980.",
        "Gravity by latitude.";
    "wieringa-1992", SecondHand, "Wieringa J. Updating the Davenport roughness classification. J Wind Eng Ind Aerodyn 1992;41–44:357–368.",
        "Roughness lengths of landscapes.";
}

/// The source with this key.
pub fn find(key: &str) -> Option<&'static Source> {
    SOURCES.iter().find(|source| source.key == key)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_are_in_order_and_unique() {
        assert!(SOURCES.windows(2).all(|pair| pair[0].key < pair[1].key));
    }
}
