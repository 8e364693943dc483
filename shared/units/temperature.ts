/**
 * Celsius and Fahrenheit: conversion of temperatures, and separately of differences. 10 C warmer is 18 F warmer, while 10 C is 50 F.
 * Exact: NIST Special Publication 811 (2008), appendix B.8.
 */
export function fahrenheitToCelsius(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}
export function celsiusToFahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}
export function fahrenheitDifferenceToCelsius(fahrenheitDegrees: number): number {
  return (fahrenheitDegrees * 5) / 9;
}
export function celsiusDifferenceToFahrenheit(celsiusDegrees: number): number {
  return (celsiusDegrees * 9) / 5;
}
