/** Cautions by the contract's codes, said at the step where the hand is. The maker's procedure and local rules come first. */
export const cautions = {
  cranking: 'Out of gear, wheels chocked, ignition dead, fuel off. Hands, hair, leads and tablet clear of fan and belts; the key turns on your word only.',
  'petrol-mist': 'Petrol mist stands at open plug holes: no spark, no flame near them. Eyes covered when blowing out plug wells.',
  'liquid-in-cylinder': 'Liquid suspected in a cylinder: plugs out, turn by hand, no starter.',
  'wet-test-oil': 'Petrol engines only. Measure the oil, as little as will do; it sprays back. Expel it before the plugs go in.',
  'oil-in-diesel': 'Never oil into a diesel. If some went in: do not crank or start, drain first.',
  'diesel-spray': 'Injection stopped. Spray pierces skin: never loosen a line of a common rail.',
  'diesel-gauge': 'A diesel needs a gauge and an adaptor rated for it.',
  'compressed-air': 'Air can spin the engine. Piston at top dead centre, out of gear, turning bar off before air; 20 psi first, hands out of line. Bleed before unscrewing. No ear, hand or flame at an opening, never air at a person.',
  'running-engine': 'Exhaust led away: carbon monoxide. Clear of fan and belts. No road test with the brake vacuum off.',
  'high-tension': 'Earth the lead that is off; short bursts only, unburnt fuel heats the exhaust.',
  'current-clamp': 'Plugs in, ignition and fuel dead. Old cars may have positive earth.',
  'coolant-cap': 'Open the cap only when cold. Never more pressure than its rating.',
  borescope: 'Never turn the engine with the borescope in.',
  'strip-down': 'Old gaskets may hold asbestos: wet them, no wire brush, no air line. Gloves against used oil.',
}
