/**
 * One Newton step towards the operating point, seen from the loads' terminals. There the network is a symmetric
 * matrix Z of ohms, and a load of P watts at v volts acts like a conductance of −P/v² siemens.
 *
 * @param impedanceOhm Z, row by row
 * @param softnessS P/v² by load, 0 for constant current
 * @param excessV how far each load's voltage is above what the network can hold at the current it then draws
 * @returns volts to take off each load's voltage; null when I − √S·Z·√S is not positive definite: then the loads
 *          take more than they give back for any fall of voltage, which means the point of collapse is passed
 */
export function newtonStep(impedanceOhm: Float64Array, softnessS: Float64Array, excessV: Float64Array): Float64Array | null {
	const n = excessV.length;
	const root = softnessS.map(Math.sqrt);
	const lower = new Float64Array(n * n);
	for (let i = 0; i < n; i++) {
		for (let j = 0; j <= i; j++) {
			let sum = (i === j ? 1 : 0) - root[i]! * impedanceOhm[i * n + j]! * root[j]!;
			for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
			if (i !== j) lower[i * n + j] = sum / lower[j * n + j]!;
			else if (sum > 1e-14) lower[i * n + i] = Math.sqrt(sum);
			else return null;
		}
	}
	const y = root.map((r, i) => r * excessV[i]!);
	for (let i = 0; i < n; i++) {
		for (let k = 0; k < i; k++) y[i]! -= lower[i * n + k]! * y[k]!;
		y[i]! /= lower[i * n + i]!;
	}
	for (let i = n - 1; i >= 0; i--) {
		for (let k = i + 1; k < n; k++) y[i]! -= lower[k * n + i]! * y[k]!;
		y[i]! /= lower[i * n + i]!;
	}
	return excessV.map((excess, i) => {
		let step = excess;
		for (let j = 0; j < n; j++) step += impedanceOhm[i * n + j]! * root[j]! * y[j]!;
		return step;
	});
}
