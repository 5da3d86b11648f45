// SPDX-FileCopyrightText: 2026 The Hencote authors
// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reads states of the air and what Hencote makes of them, and computes each
// once more with psychrolib, which follows the ASHRAE handbook.
'use strict'

const readline = require('readline')
const psychrolib = require('psychrolib')

psychrolib.SetUnitSystem(psychrolib.SI)

// name, psychrolib's answer, how far apart they may be: against its size or plainly
const QUANTITIES = [
  ['saturation pressure', (t) => psychrolib.GetSatVapPres(t), { share: 1e-6 }],
  ['humidity ratio', (t, humidity, pressure) =>
    psychrolib.GetHumRatioFromRelHum(t, humidity, pressure), { share: 1e-6 }],
  ['dew point', (t, humidity) => psychrolib.GetTDewPointFromRelHum(t, humidity), { plain: 1e-3 }],
  ['wet bulb', (t, humidity, pressure) =>
    psychrolib.GetTWetBulbFromRelHum(t, humidity, pressure), { plain: 2e-3 }],
  ['enthalpy', (t, humidity, pressure) => psychrolib.GetMoistAirEnthalpy(t,
    psychrolib.GetHumRatioFromRelHum(t, humidity, pressure)), { plain: 1 }],
  ['volume', (t, humidity, pressure) => psychrolib.GetMoistAirVolume(t,
    psychrolib.GetHumRatioFromRelHum(t, humidity, pressure), pressure), { share: 1e-6 }],
  ['density', (t, humidity, pressure) => psychrolib.GetMoistAirDensity(t,
    psychrolib.GetHumRatioFromRelHum(t, humidity, pressure), pressure), { share: 1e-6 }]
]

const worst = QUANTITIES.map(() => 0)
let points = 0

function compare (line) {
  const [t, humidity, pressure, ...ours] = line.split(' ').map(Number)
  QUANTITIES.forEach(([, theirs, within], at) => {
    const answer = theirs(t, humidity, pressure)
    const apart = Math.abs(ours[at] - answer)
    const allowed = within.plain ?? Math.abs(answer) * within.share
    worst[at] = Math.max(worst[at], Number.isFinite(apart) ? apart / allowed : Infinity)
  })
  points++
}

function report () {
  console.log(`1..${QUANTITIES.length + 1}`)
  console.log(`${points === 10000 ? 'ok' : 'not ok'} 1 - ${points} points were compared`)
  QUANTITIES.forEach(([name], at) => {
    const fine = worst[at] <= 1 ? 'ok' : 'not ok'
    console.log(`${fine} ${at + 2} - ${name}: ${(worst[at] * 100).toFixed(2)} % of what is allowed`)
  })
}

readline.createInterface({ input: process.stdin }).on('line', compare).on('close', report)
