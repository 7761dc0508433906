/** What a conductor is made of: area, resistance, diameter, lugs. */
export {};
