/** German of what hazards rest on, by the English wording. */
export const safetyPhrases: Readonly<Record<string, string>> = {
  'common practice, no source': 'übliche Praxis, ohne Quelle',
  'OSHA wood-dust page: 15 mg/m³ total, 5 mg/m³ respirable, NIOSH 1 mg/m³ (read); Directive (EU) 2017/2398: hardwood 2 mg/m³ (second-hand)':
    'OSHA, Seite zu Holzstaub: 15 mg/m³ gesamt, 5 mg/m³ alveolengängig, NIOSH 1 mg/m³ (gelesen); Richtlinie (EU) 2017/2398: Hartholz 2 mg/m³ (aus zweiter Hand)',
  '90 to 105 dB(A) at saw and router (from memory)': '90 bis 105 dB(A) an Säge und Oberfräse (aus dem Gedächtnis)',
  'IEC 60364-4-41 (from memory)': 'IEC 60364-4-41 (aus dem Gedächtnis)',
  'force = pressure × area, derived: 10 kPa on 0.4 m² is 4 kN':
    'Kraft = Druck × Fläche, abgeleitet: 10 kPa auf 0,4 m² sind 4 kN',
  'distance for implants 150 to 300 mm (from memory)': 'Abstand für Implantate 150 bis 300 mm (aus dem Gedächtnis)',
  'excursion below the tuning, derived': 'Hub unter der Abstimmung, abgeleitet',
  'HSE lifting guidance (second-hand): 25 kg for men and 16 kg for women near the body at waist height, two people two thirds of their sum, three half of it; filters, not limits':
    'HSE, Leitlinie zum Heben (aus zweiter Hand): 25 kg für Männer und 16 kg für Frauen nah am Körper in Hüfthöhe, zu zweit zwei Drittel der Summe, zu dritt die Hälfte; Richtwerte, keine Grenzen',
  '49 CFR 571.207 S4.2: 20 × mass × 9.8 N (read); driving loads: Berg, Sicks, Cheynet, ESV 09-0008 (read); lashing eyes: DIN 75410-2 (from memory)':
    '49 CFR 571.207 S4.2: 20 × Masse × 9,8 N (gelesen); Fahrlasten: Berg, Sicks, Cheynet, ESV 09-0008 (gelesen); Zurrösen: DIN 75410-2 (aus dem Gedächtnis)',
  '49 CFR 571.207 S4.2 as a yardstick (read)': '49 CFR 571.207 S4.2 als Maßstab (gelesen)',
  'common practice; UN R67 and R110 rule gas tanks (from memory)':
    'übliche Praxis; für Gastanks gelten UN R67 und R110 (aus dem Gedächtnis)',
  'vehicle maker’s handbook': 'Handbuch des Fahrzeugherstellers',
  'vehicle maker’s handbook; common practice': 'Handbuch des Fahrzeugherstellers; übliche Praxis',
  '33 CFR 183.420 (read, boats); common practice': '33 CFR 183.420 (gelesen, Boote); übliche Praxis',
  '33 CFR 183.445 demands protection from abrasion (read)': '33 CFR 183.445 verlangt Scheuerschutz (gelesen)',
  'common practice; place of the fuse: 33 CFR 183.455 (read)':
    'übliche Praxis; Platz der Sicherung: 33 CFR 183.455 (gelesen)',
  'input less output power': 'aufgenommene weniger abgegebene Leistung',
  'UN R100, voltage class of up to 30 V AC, wording seen in a national copy (second-hand)':
    'UN R100, Spannungsklasse bis 30 V Wechselspannung, Wortlaut in einer nationalen Fassung gesehen (aus zweiter Hand)',
  'derived: neither output of a full bridge is at ground': 'abgeleitet: kein Ausgang einer Vollbrücke liegt auf Masse',
  'common practice; a garage fills within minutes even with its door open (second-hand)':
    'übliche Praxis; eine Garage füllt sich selbst bei offenem Tor in Minuten (aus zweiter Hand)',
  'NIOSH publication 98-126, 1998 (second-hand)': 'NIOSH-Veröffentlichung 98-126, 1998 (aus zweiter Hand)',
  'local law': 'örtliches Recht',
  'derived: outputs of a bridge': 'abgeleitet: Ausgänge einer Brücke'
}
